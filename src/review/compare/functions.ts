// The sheet's own functions that changed: form, formula, conditions, source.
import type { FunctionDefinition, Need } from '../../language/ast.ts';
import { formOf } from '../../language/form.ts';
import { print, printText } from '../../language/print.ts';
import type { FunctionResult } from '../../run/result.ts';
import type { DefinitionChange } from '../comparison.ts';
import { clauseChanges, localsText } from './clauses.ts';
import { sameMeaning } from './meaning.ts';
import { pairByName } from './pairing.ts';
import { changeOf, linesOf, type Pair, type Side, textsOf } from './side.ts';

export function compareFunctions(pair: Pair): readonly DefinitionChange[] {
  return pairByName(functions(pair.old), functions(pair.new), ({ name }) => name, pair.renames).flatMap(([old, now]) => {
    const change = functionChange(pair, old, now);
    return change === null ? [] : [change];
  });
}

function functionChange(pair: Pair, old: FunctionResult | null, now: FunctionResult | null): DefinitionChange | null {
  const own = old !== null && now !== null && sameMeaning(old.statement, now.statement, pair.renames);
  const oldName = old !== null && now !== null && old.name !== now.name ? old.name : null;
  const { source, description } = clauseChanges(old?.statement, now?.statement);
  if (own && oldName === null && source === null && description === null) return null;
  const written = own ? null : textsOf(old && writtenText(old, pair.old), now && writtenText(now, pair.new));
  return { change: changeOf(old, now), line: linesOf(pair, old, now), name: (now ?? old)!.name, oldName, written, source, description };
}

/** `drop(I: A, L: m): V = 2 * r_T * L * I needs L > 0`. */
function writtenText(of: FunctionResult, side: Side): string {
  const definition: FunctionDefinition = of.statement;
  if (definition.broken) return side.textOf(of);
  const needs = definition.clauses.needs.map(needText).join(', ');
  return `${formOf(definition)} = ${print(definition.body)}${localsText(definition.clauses)}${needs && ` needs ${needs}`}`;
}

function needText({ condition, because }: Need): string {
  return print(condition) + (because === null ? '' : ` because ${printText(because.value)}`);
}

function functions({ statements }: Side): readonly FunctionResult[] {
  return statements.filter((of) => of.kind === 'function');
}
