// Signatures that a person has to look at, and roles that have not signed.
import type { Check } from '../check.ts';
import { type Finding, finding } from '../finding.ts';
import { type SignatureStanding, signatureStandings } from '../signature-standing.ts';

export const signatures: Check = (review) => {
  const signed = signatureStandings(review);
  const missing = review.require
    .filter((role) => !signed.some(({ signature }) => signature.role.toLowerCase() === role.toLowerCase()))
    .map((role) => finding('signature-missing', 'finding', { start: 0, end: 0 }, `nobody has signed as ${role}`));
  return [...signed.flatMap((one) => findings(one, review.version)), ...missing];
};

/** What is to be settled with one signature. */
function findings({ signature, since, otherResults, ownWork }: SignatureStanding, now: string): readonly Finding[] {
  const { role, name, date, version, at } = signature;
  const signed = `signed as ${role} by ${name} on ${date}`;
  const found = (code: string, message: string) => finding(code, 'finding', at, `${signed}: ${message}`);
  return [
    ...(since === null ? [] : [found('signature-out-of-date', since)]),
    ...(otherResults === null
      ? []
      : [found('version-gives-other-results', `version ${version} gave other results than ${now} does: ${otherResults}`)]),
    ...(ownWork ? [found('check-not-independent', `${name} has prepared the sheet too; have another person look at it`)] : []),
  ];
}
