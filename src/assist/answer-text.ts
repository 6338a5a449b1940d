// What a statement came to, in a few words: for the end of its line, the outline and hovers.
import { listText, missingText, verdict } from '../run/record.ts';
import type { StatementResult } from '../run/result.ts';

/** `34.40 A ± 0.69 A (k=2)`, `holds, 9.5 % in hand`, `not calculated: needs a`; null where there is nothing to say. */
export function answerText(result: StatementResult): string | null {
  switch (result.kind) {
    case 'entry':
      return result.missing === null ? (result.value?.text ?? null) : missingText(result);
    case 'column':
      return result.missing === null ? listText(result.values) : missingText(result);
    case 'requirement':
      if (result.status === 'not calculated') return missingText(result);
      return verdict(result.status, result.sides).slice(0, 2).join(', ');
    case 'curve':
    case 'tabulation':
      return result.missing === null ? null : missingText(result);
    case 'function':
    case 'instrument':
    case 'action':
    case 'use':
    case 'unreadable':
      return null;
    default:
      return result satisfies never;
  }
}
