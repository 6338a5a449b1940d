// The word that is being written at a cursor: a name, the beginning of a unit, or nothing yet.
import type { Token } from '../../language/token.ts';
import { type Span, span } from '../../text/span.ts';

export interface WordAt {
  readonly insertAt: Span;
  readonly replaceAt: Span;
}

const UNIT_LETTER = /[\p{L}%°]/u;

/** Null inside of numbers and dates, where nothing is to be offered. */
export function wordAt(code: string, tokens: readonly Token[], offset: number): WordAt | null {
  const token = tokens.findLast(({ at }) => at.start < offset && offset <= at.end);
  const word = (start: number, end: number): WordAt => ({ insertAt: span(start, offset), replaceAt: span(start, end) });
  switch (token?.kind) {
    case 'name':
    case 'word':
      return word(token.at.start, token.at.end);
    case 'quantity':
    case 'unit': {
      const unit = token.kind === 'unit' ? token.at : token.unitAt;
      if (offset < unit.start) return null;
      let start = offset;
      while (start > unit.start && UNIT_LETTER.test(code.charAt(start - 1))) start--;
      let end = offset;
      while (end < unit.end && UNIT_LETTER.test(code.charAt(end))) end++;
      return word(start, end);
    }
    case 'number':
      if (token.text === 'pi') return word(token.at.start, token.at.end);
      return offset === token.at.end ? word(offset, offset) : null;
    case 'date':
      return null;
    default:
      return word(offset, offset);
  }
}
