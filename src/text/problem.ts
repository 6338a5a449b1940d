// Problems as data: a code, a place and the facts; the words and the mends are made from the facts in one table a stage.
import { shortenedMessage } from './shortened.ts';
import type { Span } from './span.ts';

export type Severity = 'error' | 'warning' | 'note';

/** Replace the text at `at` (in the problem's own text) by `text`. */
export interface Edit {
  readonly at: Span;
  readonly text: string;
}

/** A change that would mend the problem, offered as a quick fix. `title` says what it does, in the imperative. */
export interface Mend {
  readonly title: string;
  readonly edits: readonly Edit[];
}

/** Another place that belongs to a problem, such as a first definition. `cell` is the block's number in the sheet, absent for the same block. */
export interface Place {
  readonly at: Span;
  readonly label: string;
  readonly cell?: number;
}

/**
 * Something wrong, doubtful or worth knowing at one place of a text.
 * `facts` are what a machine may want of it; `message` is one or two plain sentences without a final full stop.
 */
export interface Problem {
  readonly code: string;
  readonly severity: Severity;
  readonly at: Span;
  readonly message: string;
  readonly facts: Readonly<Record<string, unknown>>;
  readonly mends: readonly Mend[];
  readonly places: readonly Place[];
}

/** How one kind of problem is worded and mended. */
export interface ProblemKind<Facts> {
  readonly severity: Severity;
  readonly words: (facts: Facts) => string;
  readonly mends?: (facts: Facts, at: Span) => readonly Mend[];
}

/** Declares one kind of problem; the facts' type is taken from the words. */
export function kind<Facts extends object>(
  severity: Severity,
  words: (facts: Facts) => string,
  mends?: (facts: Facts, at: Span) => readonly Mend[],
): ProblemKind<Facts> {
  return mends ? { severity, words, mends } : { severity, words };
}

// biome-ignore lint/suspicious/noExplicitAny: the facts of each kind differ; each entry is typed where it is declared.
type Table = Readonly<Record<string, ProblemKind<any>>>;
type FactsOf<K> = K extends ProblemKind<infer Facts> ? Facts : never;

/** A maker of problems from a table whose keys are the codes. */
export interface ProblemMaker<T extends Table> {
  <C extends keyof T & string>(code: C, at: Span, facts: FactsOf<T[C]>, places?: readonly Place[]): Problem;
  readonly codes: readonly string[];
}

/** Makes problems of the kinds in `table`. What their words quote is shortened; facts and edits are whole. */
export function problemMaker<T extends Table>(table: T): ProblemMaker<T> {
  const make = <C extends keyof T & string>(code: C, at: Span, facts: FactsOf<T[C]>, places: readonly Place[] = []): Problem => {
    const entry = table[code]!;
    return {
      code,
      severity: entry.severity,
      at,
      message: shortenedMessage(sentence(entry.words(facts))),
      facts: facts as Readonly<Record<string, unknown>>,
      mends: (entry.mends?.(facts, at) ?? []).map(({ title, edits }) => ({ title: shortenedMessage(title), edits })),
      places,
    };
  };
  return Object.assign(make, { codes: Object.keys(table) });
}

/** The problems in their order, each once. */
export function eachOnce(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length < 2) return problems;
  const seen = new Set<string>();
  return problems.filter((p) => {
    const key = `${p.code} ${p.at.start} ${p.at.end} ${p.message}`;
    return !seen.has(key) && seen.add(key);
  });
}

/** The mend that replaces the problem's own place. */
export function replace(title: string, at: Span, text: string): Mend {
  return { title, edits: [{ at, text }] };
}

/** Words as a sentence: with a capital, unless they begin with code. */
function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A problem's message inside another sentence. */
export function insideSentence(message: string): string {
  return /^\p{Lu}(?:\p{Ll}| )/u.test(message) ? message.charAt(0).toLowerCase() + message.slice(1) : message;
}
