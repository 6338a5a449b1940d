// What each signature of a sheet is worth today, and what changed since one that lapsed was given.
import type { SheetEvaluation } from '../run/evaluate.ts';
import type { Signature } from '../sheet/front-matter.ts';
import { NO_DIGEST, type SignatureState, signatureStates } from '../sheet/signatures.ts';
import { compareSheets } from './compare.ts';
import { isSame } from './comparison.ts';
import { headline } from './headline.ts';
import { otherResults, otherResultsText } from './other-results.ts';

/** The sheet as it was when a digest covered it, and the name of that revision: `1a2b3c4d5e of 2026-11-20`. */
export interface Covered {
  readonly evaluation: SheetEvaluation;
  readonly revision: string;
}

/** Finds the newest state of the sheet that a digest (`sha256:…`) covers; or says in a clause why there is none. */
export type FindCovered = (covers: string) => Covered | { readonly because: string };

export interface SignedSheet {
  readonly evaluation: SheetEvaluation;
  /** The version that evaluated it. */
  readonly version: string;
  /** Left out where there is no history to look into. */
  readonly covered?: FindCovered | undefined;
}

export interface SignatureStanding {
  readonly signature: Signature;
  readonly state: SignatureState;
  /** What changed since a lapsed one was given, a clause; null for one that covers the sheet as it is. */
  readonly since: string | null;
  /** Where it was given with another version, whose results this version does not give: which, `I_n 34.40 A → 34.41 A`; else null. */
  readonly otherResults: string | null;
  /** Whether it checks or approves what the same person prepared. */
  readonly ownWork: boolean;
}

/** How the signatures stand, in their order. */
export function signatureStandings({ evaluation, version, covered }: SignedSheet): readonly SignatureStanding[] {
  const { signatures } = evaluation.sheet.frontMatter;
  const preparers = new Set(signatures.filter(({ role }) => role.toLowerCase() === 'prepared').map(({ name }) => person(name)));
  return signatureStates(signatures, evaluation.digest).map(({ signature, state }) => {
    const { role, name, covers } = signature;
    const found = state === 'current' || covers === NO_DIGEST ? null : (covered?.(covers) ?? null);
    const signed = state === 'current' ? evaluation : found && 'evaluation' in found ? found.evaluation : null;
    return {
      signature,
      state,
      since: state === 'current' ? null : covers === NO_DIGEST ? NEVER_FILLED : sinceText(found, evaluation),
      otherResults: signed && otherText(signature, signed, version),
      ownWork: INDEPENDENT.has(role.toLowerCase()) && preparers.has(person(name)),
    };
  });
}

/** Roles that somebody else has than who prepared the sheet, as usual in design verification (common practice). */
const INDEPENDENT: ReadonlySet<string> = new Set(['checked', 'approved']);

const NEVER_FILLED = 'it covers nothing, its digest was never filled in';
const CHANGED = 'the sheet, or a file that it uses, was changed since';

function sinceText(found: ReturnType<FindCovered> | null, now: SheetEvaluation): string {
  if (found === null) return CHANGED;
  if ('because' in found) return `${CHANGED}; what changed can't be told: ${found.because}`;
  const comparison = { ...compareSheets(found.evaluation, now), signatures: [] };
  if (isSame(comparison)) return `it covers ${found.revision}, and since then nothing changed in meaning, only how it is written`;
  return `it covers ${found.revision}; since then: ${headline(comparison).join(', ') || 'small changes'}`;
}

function otherText({ version: its }: Signature, evaluation: SheetEvaluation, version: string): string | null {
  const others = its === null || its === version ? [] : otherResults(evaluation);
  return others.length === 0 ? null : otherResultsText(others);
}

/** Spelling with capitals, blanks or composed letters makes no other person. */
function person(name: string): string {
  return name.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim();
}
