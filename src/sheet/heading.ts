// The words of a heading in Markdown that is written with `#`.
import { withoutEnd } from '../text/without-end.ts';

/** The words of the first heading in `text`, the marks that may close it left out; null where there is none. */
export function firstHeading(text: string): string | null {
  const written = /^ {0,3}#{1,6}[ \t]+(\S.*)/m.exec(text)?.[1]?.trimEnd();
  if (written === undefined) return null;
  const bare = withoutEnd(written, '#');
  return /[ \t]$/.test(bare) ? bare.trimEnd() : written;
}
