// A name of one statement: a parameter, a local, or the variable of a range.
import { print, printRange, printTyped } from '../../language/print.ts';
import { labelOf } from '../../run/module.ts';
import type { Binding } from '../scope.ts';
import { code, type HoverPart, shortened, text } from './part.ts';

export function bindingParts({ kind, name, type, value, range, item }: Binding): readonly HoverPart[] {
  const written = printTyped(name.name, type);
  const where = item.statement.kind === 'function' ? ` of \`${labelOf(item.statement)}\`` : ' of this statement';
  switch (kind) {
    case 'parameter':
      return [code(written), text(`a parameter${where}${type === null ? ', a plain number' : ''}`)];
    case 'local':
      return [code(shortened(`${written} = ${value ? print(value) : '…'}`)), text(`a name${where}`)];
    case 'variable':
      return [code(range ? printRange(range) : written), text(`the variable${where}`)];
    default:
      return kind satisfies never;
  }
}
