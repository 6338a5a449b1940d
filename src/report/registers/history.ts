// Register of changes: what version control has of the sheet's file, newest first.
import { element } from '../../view/node.ts';
import { type Register, table } from './register.ts';

/** Changes beyond these are counted. */
const MOST = 200;

export const history: Register = {
  id: 'history',
  title: 'Change history',
  make: ({ history: known }) => {
    if (known === undefined) return null;
    if ('because' in known) return element('p', {}, `The changes of this sheet are not known: ${known.because}.`);
    const { changes, complete, uncommitted } = known;
    const lines = changes.slice(0, MOST).map((c) => [c.date, element('code', {}, c.short), c.author, c.subject]);
    const remarks = [
      uncommitted &&
        (changes.length === 0
          ? 'This sheet has not been committed yet.'
          : 'The sheet was changed after the newest commit; this is the changed one.'),
      changes.length > MOST && `… and ${changes.length - MOST} older changes.`,
      !complete && 'The history of this clone was cut off; older changes may be missing.',
    ];
    return [lines.length > 0 && table(['Date', 'Commit', 'Author', 'Change'], lines), ...remarks.map((r) => r && element('p', {}, r))];
  },
};
