// The description of a function that a name stands for: of the mathematics, of the library, or of a sheet.
import type { FunctionDefinition } from '../language/ast.ts';
import { describeFunction, type FunctionDescription, functionList } from '../run/function-list.ts';
import { type Referent, textOfModule } from './referent.ts';

let builtIn: ReadonlyMap<string, FunctionDescription> | null = null;

/** Null where it is no function. */
export function describeReferent(referent: Referent): FunctionDescription | null {
  if (referent.kind === 'mathematics') return describeBuiltIn(null, referent.name);
  if (referent.kind !== 'function') return null;
  const text = textOfModule(referent.item.module);
  const known = text.kind === 'library' ? describeBuiltIn(text.name, referent.name) : null;
  return known ?? describeFunction(referent.item.statement as FunctionDefinition, null, []);
}

/** A function of the library sheet of that name, or of the mathematics. */
function describeBuiltIn(library: string | null, name: string): FunctionDescription | null {
  const key = (sheet: string | null, of: string) => `${sheet ?? ''} ${of}`;
  builtIn ??= new Map(functionList().map((description) => [key(description.library, description.name), description]));
  return builtIn.get(key(library, name)) ?? null;
}
