// The title block: fields that changed, signatures that came, went or lapsed.

import { isSignatures } from '../../sheet/digest.ts';
import type { Signature } from '../../sheet/front-matter.ts';
import { FIELD_NAMES, type Field } from '../../sheet/front-matter-schema.ts';
import { type SignatureState, signatureStates } from '../../sheet/signatures.ts';
import { readSections } from '../../sheet/yaml-sections.ts';
import type { FieldChange, SignatureChange } from '../comparison.ts';
import { pairByLikeness, pairByName } from './pairing.ts';
import { changeOf, oneLine, type Pair, type Side } from './side.ts';

/** Fields of the front matter but signatures; keys that mean nothing to Ampwright, and values that could not be read, as they are written. */
export function compareFrontMatter(pair: Pair): readonly FieldChange[] {
  return pairByName(fields(pair.old), fields(pair.new), ({ name }) => name, new Map()).flatMap(([old, now]): readonly FieldChange[] => {
    if (old?.value === now?.value) return [];
    const value = { old: old?.value ?? null, new: now?.value ?? null };
    return [{ change: changeOf(old, now), line: { old: old?.line ?? null, new: now?.line ?? null }, field: (now ?? old)!.name, value }];
  });
}

interface FieldText {
  readonly name: string;
  readonly value: string;
  readonly line: number;
}

function fields({ evaluation: { sheet }, lineAt }: Side): readonly FieldText[] {
  const code = sheet.cells.find((cell) => cell.kind === 'front matter')?.code;
  if (code === undefined) return [];
  return readSections(sheet.text, code).flatMap(({ at }): readonly FieldText[] => {
    const written = sheet.text.slice(at.start, at.end);
    const [, head, rest] = /^["']?([^:"']+)(?:["']\s*)?:(.*)$/s.exec(written) ?? [];
    if (isSignatures(written) || head === undefined) return [];
    const key = head.trimEnd();
    return [{ name: key, value: readText(sheet.frontMatter, key) ?? oneLine(rest!), line: lineAt(at.start) }];
  });
}

/** A field that was read, whatever its YAML is written like. */
function readText(front: Side['evaluation']['sheet']['frontMatter'], key: string): string | null {
  if (key === 'signatures' || !(FIELD_NAMES as readonly string[]).includes(key) || !front.places.has(key)) return null;
  const value = front[key as Exclude<Field, 'signatures'>];
  return value === null ? null : Array.isArray(value) ? value.join(', ') : String(value);
}

interface Stated {
  readonly signature: Signature;
  readonly state: SignatureState;
}

/** Signatures that are not the same on both sides, or that do not stand as they did. */
export function compareSignatures(pair: Pair): readonly SignatureChange[] {
  const likenesses = [
    ({ signature: { role, name, date, covers } }: Stated) => [role, name, date, covers].join('\0'),
    ({ signature: { role, name } }: Stated) => [role, name].join('\0'),
  ];
  return pairByLikeness(states(pair.old), states(pair.new), likenesses, new Map()).flatMap(([old, now]): readonly SignatureChange[] => {
    const { role, name, date } = (now ?? old)!.signature;
    const lapsed = old?.state === 'current' && now?.state === 'out of date';
    if (old && now && old.state === now.state && old.signature.date === date && old.signature.covers === now.signature.covers) return [];
    const line = { old: old && pair.old.lineAt(old.signature.at.start), new: now && pair.new.lineAt(now.signature.at.start) };
    return [{ change: changeOf(old, now), line, role, name, date, state: { old: old?.state ?? null, new: now?.state ?? null }, lapsed }];
  });
}

function states({ evaluation: { sheet, digest } }: Side): readonly Stated[] {
  return signatureStates(sheet.frontMatter.signatures, digest);
}
