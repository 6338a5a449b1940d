// Register of the functions used, their own calls included: form, formula, what they need, source.
import type { FunctionDefinition, Statement } from '../../language/ast.ts';
import { expressionsOf, walk } from '../../language/walk.ts';
import type { SheetResult } from '../../run/result.ts';
import { formula, formulaCell } from '../../view/ledger/parts.ts';
import { formulaOf } from '../../view/math/formula.ts';
import { SYMBOLS } from '../../view/math/scope.ts';
import { mathParts } from '../../view/math.ts';
import { element } from '../../view/node.ts';
import { headOf, typeText } from '../../view/rows/function.ts';
import { functionsOf } from '../../view/to-view.ts';
import { type Register, table } from './register.ts';

export const functions: Register = {
  id: 'functions',
  title: 'Functions used',
  make: ({ result }) => {
    const used = usedFunctions(result);
    const known = functionsOf(result);
    const lines = used.map((f) => {
      const { locals, needs, source, description } = f.clauses;
      const units = f.parameters.map((p) => `${p.name.name} in ${typeText(p.type)}`).join(', ');
      return [
        [formula(headOf(f)), description && element('div', {}, description.value)],
        [
          ...formulaCell({ ...formulaOf(f.body, locals, { values: SYMBOLS, functions: known }), putIn: null }, 2),
          element('div', { class: 'aw-units' }, units),
        ],
        needs.map((n) => element('div', {}, formula(mathParts(n.condition)), n.because?.value)),
        source ? `${source.kind}: ${source.text.value}` : 'without a source',
      ];
    });
    return lines.length === 0 ? null : table(['Function', 'Formula', 'Needs', 'Source'], lines);
  },
};

/** The functions that a sheet calls, and those that these call, in the order of the calls. */
function usedFunctions(result: SheetResult): readonly FunctionDefinition[] {
  const found = new Set<FunctionDefinition>();
  const statements = result.cells.flatMap((cell) => cell.statements.map((s) => s.statement));
  // What is still to be looked into stands in a list, the next one last, since functions may call each other at any depth.
  const ahead: Statement[] = statements.filter((s) => s.kind !== 'function').reverse();
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    if (next.kind === 'function') {
      if (found.has(next)) continue;
      found.add(next);
    }
    ahead.push(...calledIn(next, result).reverse());
  }
  return [...found];
}

function calledIn(statement: Statement, { functionNamed }: SheetResult): FunctionDefinition[] {
  const called = new Set<FunctionDefinition>();
  for (const expression of expressionsOf(statement)) {
    walk(expression, (node) => {
      const definition = node.kind === 'call' ? functionNamed(node.callee.name) : undefined;
      if (definition) called.add(definition);
    });
  }
  return [...called];
}
