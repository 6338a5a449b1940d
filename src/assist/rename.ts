// Rename across the whole sheet: every place of the name in blocks, heads, captions and prose, or a clear reason why not.
import { MATHEMATICS } from '../language/functions/index.ts';
import { isName, nameSpelling } from '../language/name.ts';
import { RESERVED } from '../language/token.ts';
import { type OpenSheet, openSheet } from '../run/open-sheet.ts';
import type { Span } from '../text/span.ts';
import { fileWith, type LocatedEdit } from './edits.ts';
import { contentOf, type Spot } from './location.ts';
import { definitionOf, type Referent } from './referent.ts';
import { changeOfMeaning } from './same-meaning.ts';
import { occurrenceAt, occurrencesOfReferent } from './sheet-occurrences.ts';

export interface Refusal {
  readonly refused: string;
}

/** What would be renamed: its place and its name as it is written there. */
export interface RenameTarget {
  readonly at: Span;
  readonly name: string;
}

/** The name at a place, if it can be renamed. */
export function renameTarget(open: OpenSheet, spot: Spot): RenameTarget | Refusal {
  const occurrence = occurrenceAt(open, spot);
  if (!occurrence) return { refused: 'There is no name here' };
  const { at, referent } = occurrence;
  const name = (contentOf(open, spot.text) ?? '').slice(at.start, at.end);
  if (!referent) return { refused: `\`${name}\` is not defined` };
  const refused = notOurs(open, referent);
  return refused === null ? { at, name } : { refused };
}

/** The edits that give the name at a place another one. */
export function rename(open: OpenSheet, spot: Spot, written: string): readonly LocatedEdit[] | Refusal {
  const target = renameTarget(open, spot);
  if ('refused' in target) return target;
  const referent = occurrenceAt(open, spot)!.referent!;
  const newText = written.trim().normalize('NFC');
  const refused = notAName(newText, referent) ?? taken(open, nameSpelling(newText), referent);
  if (refused !== null) return { refused };
  const edits = occurrencesOfReferent(open, referent).map(({ text, at }): LocatedEdit => ({ text, at, newText }));
  const change = changeOfMeaning(open, openSheet(fileWith(open, edits), open.files));
  return change === null ? edits : { refused: `With the name \`${newText}\` ${change}` };
}

/** Why what a name stands for can't be renamed from this sheet; null where it can. */
function notOurs(open: OpenSheet, referent: Referent): string | null {
  if (referent.kind === 'unit') return `\`${referent.name}\` is a unit`;
  if (referent.kind === 'row') return '`row` is a word of the notation';
  if (referent.kind === 'mathematics') return `\`${referent.name}\` belongs to the mathematics`;
  const definition = definitionOf(open, referent);
  if (definition?.text.kind === 'library') return `\`${referent.name}\` belongs to the library`;
  if (definition?.text.kind === 'file') return `\`${referent.name}\` is defined in \`${definition.text.path}\`; rename it there`;
  return null;
}

function notAName(written: string, { kind }: Referent): string | null {
  const name = nameSpelling(written);
  if (!isName(written)) return `\`${written}\` is no name: a name begins with a letter or \`_\`, and letters, digits and \`_\` follow`;
  if ((RESERVED as readonly string[]).includes(name)) return `\`${name}\` is a word of the notation and can't be a name`;
  return kind !== 'column' && MATHEMATICS.has(name) ? `\`${name}\` belongs to the mathematics and can't be defined again` : null;
}

/** Whether the place where the name is defined has another definition of the new name. */
function taken(open: OpenSheet, name: string, referent: Referent): string | null {
  if (referent.kind === 'column') {
    const other = referent.name !== name && referent.table.columns.has(name);
    return other ? `Table \`${referent.table.name}\` has a column \`${name}\` already` : null;
  }
  if (referent.kind === 'parameter' || referent.kind === 'local' || referent.kind === 'variable') return null;
  const { module } = open.loaded;
  const own = module.names.get(name);
  if (own && referent.name !== name) return `\`${name}\` is defined in this sheet already`;
  const used = module.used.get(name);
  const path = used && (used.kind === 'table' ? used.table.module.path : used.item.module.path);
  return used ? `\`${name}\` comes from \`${path}\` already` : null;
}
