// Front matter: the sheet's title block and settings, read from YAML with places.
import { isMap, isSeq, type Node } from 'yaml';
import { nearSpellings } from '../text/near.ts';
import type { Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import { FIELD_NAMES, FIELDS, type Field, SIGNATURE, SIGNATURE_KEYS } from './front-matter-schema.ts';
import { frontMatterProblem } from './problems.ts';
import { asNode, keyText, type Pair, type Plain, plainValue, readPair, readSections } from './yaml-sections.ts';

/** One signature: who looked at what, and when. */
export interface Signature {
  readonly role: string;
  readonly name: string;
  /** ISO 8601 day. */
  readonly date: string;
  /** `sha256:` and 64 hexadecimal digits of the sheet's digest, or the placeholder `sha256:…`. */
  readonly covers: string;
  /** The version of Ampwright that computed the sheet; null where not given. */
  readonly version: string | null;
  /** The entry in the file. */
  readonly at: Span;
}

/** What the front matter says; field names after ISO 7200. Null: not given or not readable. */
export interface FrontMatter {
  /** Version of the file format. */
  readonly ampwright: number | null;
  readonly title: string | null;
  /** Identification number. */
  readonly number: string | null;
  /** Revision index. */
  readonly revision: string | null;
  /** Date of issue, an ISO 8601 day. */
  readonly issued: string | null;
  /** Legal owner. */
  readonly owner: string | null;
  /** Document status. */
  readonly status: string | null;
  /** Document type. */
  readonly type: string | null;
  /** Responsible department. */
  readonly department: string | null;
  /** Technical reference: who answers questions. */
  readonly reference: string | null;
  /** Language of the sheet, such as `en`. */
  readonly language: string | null;
  /** Codes and standards that the sheet follows. */
  readonly codes: readonly string[];
  /** Whether an input without a source is an error (`required`) or a warning. */
  readonly sources: 'required' | 'optional';
  /** Significant digits of computed results, 1 to 15. */
  readonly digits: number;
  readonly signatures: readonly Signature[];
  /** Where each field that was read has its value, by the field's name. */
  readonly places: ReadonlyMap<string, Span>;
}

const DEFAULTS = {
  ampwright: null,
  title: null,
  number: null,
  revision: null,
  issued: null,
  owner: null,
  status: null,
  type: null,
  department: null,
  reference: null,
  language: null,
  codes: [],
  sources: 'optional',
  digits: 4,
  signatures: [],
} as const satisfies Omit<FrontMatter, 'places'>;

/** The front matter whose YAML stands at `code`; null: the file has none. A field that can't be read is reported and has its default. */
export function readFrontMatter(text: string, code: Span | null, problems: Problem[]): FrontMatter {
  const values: Partial<Record<Field, unknown>> = {};
  const places = new Map<string, Span>();
  const keys = new Map<string, Span>();
  for (const section of code ? readSections(text, code) : []) {
    const pair = readPair(text, section, problems);
    if (!pair) continue;
    const { key, keyAt } = pair;
    const first = keys.get(key);
    if (first) {
      problems.push(frontMatterProblem('front-matter-key-twice', keyAt, { key }, [{ at: first, label: 'the first one' }]));
      continue;
    }
    keys.set(key, keyAt);
    if (!isField(key)) {
      problems.push(frontMatterProblem('front-matter-key-unknown', keyAt, { key, near: nearSpellings(key, FIELD_NAMES) }));
      continue;
    }
    const value = readField(key, pair, problems);
    if (value !== undefined) values[key] = value;
    places.set(key, pair.placeOf(pair.node) ?? keyAt);
  }
  return { ...DEFAULTS, ...values, places } as FrontMatter;
}

function isField(key: string): key is Field {
  return Object.hasOwn(FIELDS, key);
}

/** The value of a field; undefined where it is empty or wrong. */
function readField(key: Field, pair: Pair, problems: Problem[]): unknown {
  const before = problems.length;
  const plain = plainValue(pair.node, pair, problems);
  if (plain === '' || problems.length > before) return undefined;
  if (key === 'signatures' && isSeq(pair.node) && Array.isArray(plain)) return readSignatures(pair, pair.node.items, plain, problems);
  const read = FIELDS[key].safeParse(plain);
  if (read.success) return read.data;
  reportValue(key, read.error.issues[0]!, pair.node, pair, problems);
  return undefined;
}

/** Each entry by itself: a wrong one leaves the others. */
function readSignatures(pair: Pair, items: readonly unknown[], plain: readonly Plain[], problems: Problem[]): readonly Signature[] {
  const signatures: Signature[] = [];
  for (const [i, item] of items.entries()) {
    const entry = asNode(item);
    const at = pair.placeOf(entry) ?? pair.keyAt;
    for (const { key } of isMap(entry) ? entry.items : []) {
      const [name, keyAt] = [keyText(key), pair.placeOf(asNode(key)) ?? at];
      if ((SIGNATURE_KEYS as readonly string[]).includes(name)) continue;
      problems.push(frontMatterProblem('front-matter-key-unknown', keyAt, { key: name, near: nearSpellings(name, SIGNATURE_KEYS) }));
    }
    const read = SIGNATURE.safeParse(plain[i]);
    if (read.success) signatures.push({ ...read.data, version: read.data.version || null, at });
    else for (const issue of read.error.issues) reportValue('signatures', issue, entry, pair, problems);
  }
  return signatures;
}

interface Issue {
  readonly path: readonly PropertyKey[];
  readonly message: string;
}

/** Reports a wrong value at the innermost place below `node` that the issue's path leads to. */
function reportValue(field: string, issue: Issue, node: Node | null, pair: Pair, problems: Problem[]): void {
  let place = pair.placeOf(node) ?? pair.keyAt;
  let key = field;
  let inner = node;
  for (const step of issue.path) {
    if (typeof step === 'string') key = step;
    inner = isSeq(inner) || isMap(inner) ? asNode(inner.get(step, true)) : null;
    place = pair.placeOf(inner) ?? place;
  }
  problems.push(frontMatterProblem('front-matter-value', place, { key, wanted: issue.message }));
}
