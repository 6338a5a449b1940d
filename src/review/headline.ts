// What a comparison comes down to, in a few phrases, the most serious first.

import type { Comparison, RequirementChange, SheetInShort } from './comparison.ts';
import type { ComparedSheet } from './comparisons.ts';

/** `1 requirement now fails`, `1 signature lapsed`, `3 inputs changed` … */
export function headline(comparison: Comparison): readonly string[] {
  const { problems, requirements, signatures, entries, functions, tables, statements, frontMatter, prose } = comparison;
  const turned = (test: (one: RequirementChange) => boolean) => requirements.filter(test).length;
  const now = (status: string, force = 'shall') =>
    turned((one) => one.force === force && one.status.new === status && one.status.old !== status && one.turned !== 'better');
  const roles = (...of: readonly string[]) =>
    entries.filter(({ role, change, written, value, knockOn, oldName }) => {
      const own = change !== 'changed' || written !== null || (role === 'choice' && value !== null);
      return of.includes(role) && own && !(knockOn && role !== 'choice') && !(oldName !== null && written === null);
    }).length;
  const both = [...entries, ...functions, ...tables, ...requirements].filter(({ change }) => change === 'changed');
  return [
    counted(problems.filter((p) => p.change === 'added' && p.severity === 'error').length, 'new error'),
    counted(
      entries.filter(({ change, value }) => change === 'changed' && value?.new === null).length,
      'result has no value any more',
      'results have no value any more',
    ),
    counted(now('fails'), 'requirement now fails', 'requirements now fail'),
    counted(now('undecided'), 'requirement is now undecided', 'requirements are now undecided'),
    counted(now('not calculated'), 'requirement is no longer calculated', 'requirements are no longer calculated'),
    counted(now('fails', 'should'), 'recommendation now fails', 'recommendations now fail'),
    counted(now('undecided', 'should'), 'recommendation is now undecided', 'recommendations are now undecided'),
    counted(now('not calculated', 'should'), 'recommendation is no longer calculated', 'recommendations are no longer calculated'),
    counted(
      turned(({ change }) => change === 'removed'),
      'requirement was removed',
      'requirements were removed',
    ),
    counted(
      turned(({ change, written }) => change === 'changed' && written !== null),
      'criterion was changed',
      'criteria were changed',
    ),
    counted(
      turned((one) => one.turned === 'better'),
      'requirement stands better',
      'requirements stand better',
    ),
    counted(signatures.filter(({ lapsed }) => lapsed).length, 'signature lapsed', 'signatures lapsed'),
    counted(roles('choice'), 'choice changed', 'choices changed'),
    counted(roles('input'), 'input changed', 'inputs changed'),
    counted(roles('computed', 'root', 'column'), 'formula changed', 'formulas changed'),
    counted(both.filter(({ source }) => source !== null).length, 'source changed', 'sources changed'),
    counted(entries.filter(({ oldName }) => oldName !== null).length, 'entry renamed', 'entries renamed'),
    counted(
      requirements.filter(({ change, concession }) => change === 'changed' && concession !== null).length,
      'concession changed',
      'concessions changed',
    ),
    counted(
      [...entries, ...requirements].filter(({ change, because }) => change === 'changed' && because !== null).length,
      'reason changed',
      'reasons changed',
    ),
    counted(
      [...entries, ...requirements, ...functions].filter(({ change, description }) => change === 'changed' && description !== null).length,
      'description changed',
      'descriptions changed',
    ),
    counted(functions.length, 'function changed', 'functions changed'),
    counted(tables.length, 'table changed', 'tables changed'),
    counted(statements.length, 'other line changed', 'other lines changed'),
    counted(
      entries.filter(({ knockOn, role, value }) => knockOn && role !== 'choice' && value?.new !== null).length,
      'result changed with them',
      'results changed with them',
    ),
    counted(frontMatter.length, 'field of the title block changed', 'fields of the title block changed'),
    counted(prose.length, 'place in the prose changed', 'places in the prose changed'),
  ].filter((phrase) => phrase !== '');
}

/** One line for a sheet of several. */
export function sheetLine({ change, comparison, sheet, because, oldPath }: ComparedSheet): string {
  const moved = oldPath === null ? '' : ` (was ${oldPath})`;
  switch (change) {
    case 'same':
      return `no change in meaning${moved}`;
    case 'not compared':
      return `not compared: ${because}`;
    case 'added':
      return `new sheet: ${standing(sheet!)}`;
    case 'removed':
      return `removed: ${standing(sheet!)}`;
    case 'changed':
      return `${headline(comparison!).join(' · ') || 'small changes'}${moved}`;
    default:
      return change satisfies never;
  }
}

/** `3 requirements hold, 1 fails`. */
export function standing({ requirements: r }: SheetInShort): string {
  const parts = [
    counted(r.holds, 'requirement holds', 'requirements hold'),
    counted(r.fails, 'fails', 'fail'),
    counted(r.undecided, 'undecided', 'undecided'),
    counted(r['not calculated'], 'not calculated', 'not calculated'),
  ];
  return parts.filter((part) => part !== '').join(', ') || 'no requirements';
}

function counted(count: number, one: string, several = `${one}s`): string {
  return count === 0 ? '' : `${count} ${count === 1 ? one : several}`;
}
