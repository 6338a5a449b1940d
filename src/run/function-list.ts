// The built-in functions as data: what each is, how it is called, where it comes from. Made from the library's sheets, nothing is repeated here.
import type { FunctionDefinition, Statement } from '../language/ast.ts';
import { formOf, markText } from '../language/form.ts';
import { BUILTINS } from '../language/functions/index.ts';
import { print } from '../language/print.ts';
import { library } from './library.ts';

/** A function of the library or, where `library` is null, of the mathematics. */
export interface FunctionDescription {
  readonly name: string;
  /** The library sheet that it stands in. */
  readonly library: string | null;
  /** `fla_3ph(P: kW, U: V, eta, pf): A`. */
  readonly form: string;
  /** `unit` is a unit, `1` for a plain number, or what else it takes. */
  readonly parameters: readonly { readonly name: string; readonly unit: string }[];
  /** The unit of the result; null where it follows from the arguments. */
  readonly result: string | null;
  readonly formula: string;
  readonly needs: readonly { readonly condition: string; readonly because: string | null }[];
  readonly source: string | null;
  readonly description: string | null;
  /** A call; null where the library gives none. */
  readonly example: string | null;
}

/** All of them: the library in the order of its sheets, then the mathematics. */
export function functionList(): readonly FunctionDescription[] {
  const ofLibrary = library().modules.flatMap(({ name, cells }) => {
    const statements = cells.flat().map((item) => item.statement);
    return statements.flatMap((s) => (s.kind === 'function' ? [describeFunction(s, name, statements)] : []));
  });
  const ofMathematics = BUILTINS.map(({ name, form, parameters, formula, source, description, example }) => ({
    name,
    library: null,
    form,
    parameters: parameters.map((p) => ({ name: p.name, unit: p.takes })),
    result: null,
    formula,
    needs: [],
    source,
    description,
    example,
  }));
  return [...ofLibrary, ...ofMathematics];
}

/** A function of a sheet; an example is looked for among the statements. */
export function describeFunction(definition: FunctionDefinition, library: string | null, sheet: readonly Statement[]): FunctionDescription {
  const { name, parameters, result, body, clauses } = definition;
  const { source, description, locals, needs } = clauses;
  const where = locals.map((local) => `${local.name.name}${local.type ? `: ${markText(local.type)}` : ''} = ${print(local.value)}`);
  return {
    name: name.name,
    library,
    form: formOf(definition),
    parameters: parameters.map((p) => ({ name: p.name.name, unit: p.type ? markText(p.type) : '1' })),
    result: result ? markText(result) : null,
    formula: [print(body), ...(where.length > 0 ? [`with ${where.join(', ')}`] : [])].join(' '),
    needs: needs.map((need) => ({ condition: print(need.condition), because: need.because?.value ?? null })),
    source: source ? `${source.kind} "${source.text.value}"` : null,
    description: description?.value ?? null,
    example: exampleOf(name.name, sheet),
  };
}

/** A library sheet shows a function in use in an entry `example_NAME`. */
function exampleOf(name: string, sheet: readonly Statement[]): string | null {
  const example = sheet.find((s) => s.kind === 'entry' && s.name.name === `example_${name}`);
  return example?.kind === 'entry' ? print(example.value) : null;
}
