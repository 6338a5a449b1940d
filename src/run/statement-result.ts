// The run's one switch over all kinds of statement.
import type { Run } from '../language/compiler/frame.ts';
import type { Item } from '../language/program.ts';
import type { Problem } from '../text/problem.ts';
import { curveResult } from './curve-result.ts';
import { columnResult, entryResult } from './entry-result.ts';
import { requirementResult } from './requirement-result.ts';
import type { StatementResult } from './result.ts';
import { baseOf } from './result-base.ts';
import { tabulationResult } from './tabulation-result.ts';

/** The result of an item that has been run; requirements, curves and tabulations are evaluated here. */
export function statementResult(item: Item, outside: readonly Problem[], run: Run, digits: number): StatementResult {
  const { statement } = item;
  const base = () => baseOf(item, outside);
  switch (statement.kind) {
    case 'entry':
      return entryResult(item, statement, base(), run, digits);
    case 'column':
      return columnResult(item, statement, base(), digits);
    case 'function':
      return { ...base(), kind: 'function', statement, name: statement.name.name };
    case 'requirement':
      return requirementResult(item, statement, base, digits);
    case 'curve':
      return curveResult(item, statement, base);
    case 'tabulation':
      return tabulationResult(item, statement, base, digits);
    case 'instrument':
      return { ...base(), kind: 'instrument', statement, name: statement.name.name };
    case 'action':
      return { ...base(), kind: 'action', statement };
    case 'use':
      return { ...base(), kind: 'use', statement };
    case 'unreadable':
      return { ...base(), kind: 'unreadable', statement };
    default:
      return statement satisfies never;
  }
}
