// A function of the trade library on its page: form, typeset formula, parameters with units, limits, what it uses, example, source.
import type { FunctionDefinition } from '../../language/ast.ts';
import { formOf } from '../../language/form.ts';
import { MATHEMATICS } from '../../language/functions/index.ts';
import { print } from '../../language/print.ts';
import { expressionsOf, walk } from '../../language/walk.ts';
import type { EntryResult } from '../../run/result.ts';
import { formula, formulaCell } from '../../view/ledger/parts.ts';
import { type FormulaContext, formulaOf } from '../../view/math/formula.ts';
import { symbol } from '../../view/math/symbol.ts';
import { math, mathParts } from '../../view/math.ts';
import { element, escapeText, flat, textOf, toHtml } from '../../view/node.ts';
import { typeText } from '../../view/rows/function.ts';
import { exampleFact, functionFacts } from './facts.ts';
import { codeLink, functionPlace, type Places } from './places.ts';

export interface FunctionContext {
  readonly formula: FormulaContext;
  readonly level: number;
  readonly file: string;
  readonly places: Places;
  /** The entry `example_NAME` of the sheet. */
  readonly example: EntryResult | undefined;
}

export function libraryFunction(f: FunctionDefinition, context: FunctionContext): string {
  const { file, places, level, example } = context;
  const { locals, needs, source, description } = f.clauses;
  const set = { ...formulaOf(f.body, locals, context.formula), putIn: null };
  const used = usedNames(f).filter((name) => !MATHEMATICS.has(name) && places.find(name, file) !== null);
  return functionFacts(
    {
      name: f.name.name,
      place: functionPlace(f.name.name),
      form: formOf(f),
      description: description?.value ?? null,
      facts: [
        ['Formula', toHtml(flat(formulaCell(set, 2)))],
        ['Parameters', parameters(f)],
        ['Needs', needs.length === 0 ? null : `<ul>${needs.map(needItem).join('')}</ul>`],
        ['Uses', used.length === 0 ? null : used.map((name) => codeLink(name, file, places)).join(', ')],
        exampleFact(example?.statement.value ? print(example.statement.value) : null, example?.value?.text ?? null),
        ['Source', source && `<span class="aw-kind">${source.kind}</span> ${escapeText(source.text.value)}`],
      ],
    },
    level,
  );
}

/** Each parameter with its unit, then the unit of the result; the name as it is written beside a symbol that looks otherwise. */
function parameters(f: FunctionDefinition): string {
  const items = f.parameters.map(({ name, type }) => {
    const set = symbol(name.name);
    const written = textOf(set) === name.name ? null : [' ', element('code', {}, name.name)];
    return element('li', {}, math([set]), written, element('span', { class: 'aw-unit' }, ` ${typeWords(typeText(type))}`));
  });
  const result = f.result && element('li', {}, element('span', { class: 'aw-unit' }, `result ${typeWords(typeText(f.result))}`));
  return toHtml(element('ul', { class: 'aw-parameters' }, ...items, result));
}

/** A type as it follows a name: `in kW`, `a list of A`. */
function typeWords(type: string): string {
  if (type === 'number') return 'plain number or %';
  if (type === 'any') return 'any value';
  return type === 'text' || type === 'date' || type.startsWith('list') ? `a ${type}` : `in ${type}`;
}

function needItem(need: FunctionDefinition['clauses']['needs'][number]): string {
  return toHtml(element('li', { class: 'aw-need' }, formula(mathParts(need.condition)), element('span', {}, need.because?.value ?? '')));
}

/** Functions and tables that its formula, its local definitions and its limits name. */
function usedNames(f: FunctionDefinition): readonly string[] {
  const own = new Set([f.name, ...f.parameters.map((p) => p.name), ...f.clauses.locals.map((l) => l.name)].map((n) => n.name));
  const names = new Set<string>();
  for (const expression of expressionsOf(f)) {
    walk(expression, (node) => {
      if (node.kind === 'call') names.add(node.callee.name);
      if (node.kind === 'choice' || node.kind === 'lookUp') names.add(node.table.name);
      if (node.kind === 'name') names.add(node.name);
    });
  }
  return [...names].filter((name) => !own.has(name));
}
