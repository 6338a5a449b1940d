// Front matter: the sheet's title block and settings, read from YAML with places.
import type { Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';

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
}

const NONE: FrontMatter = {
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
};

/** The front matter whose YAML stands at `code`; null: the file has none. */
export function readFrontMatter(_text: string, _code: Span | null, _problems: Problem[]): FrontMatter {
  return NONE;
}
