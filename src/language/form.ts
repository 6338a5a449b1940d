// How a function is written: its name, parameters with their units, and result.
import type { FunctionDefinition, TypeMark } from './ast.ts';

/** `fla_3ph(P: kW, U: V, eta, pf): A`. */
export function formOf(definition: FunctionDefinition): string {
  const parameters = definition.parameters.map((p) => p.name.name + typeText(p.type));
  return `${definition.name.name}(${parameters.join(', ')})${typeText(definition.result)}`;
}

function typeText(mark: TypeMark | null): string {
  return mark === null ? '' : `: ${markText(mark)}`;
}

/** `kW`, `1`, `text`, `[ohm]` … */
export function markText(mark: TypeMark): string {
  switch (mark.kind) {
    case 'unit':
      return mark.unit.text === '' ? '1' : mark.unit.text;
    case 'list':
      return `[${markText(mark.of)}]`;
    default:
      return mark.kind;
  }
}
