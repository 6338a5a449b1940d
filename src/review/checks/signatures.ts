// Signatures that cover another text than the sheet's of today, and roles that have not signed.
import { signatureStates } from '../../sheet/signatures.ts';
import type { Check } from '../check.ts';
import { finding } from '../finding.ts';

export const signatures: Check = ({ evaluation, require }) => {
  const signed = signatureStates(evaluation.sheet.frontMatter.signatures, evaluation.digest);
  const lapsed = signed
    .filter(({ state }) => state === 'out of date')
    .map(({ signature: { role, name, date, at } }) =>
      finding('signature-out-of-date', 'finding', at, `signed as ${role} by ${name} on ${date}: the sheet was changed since`),
    );
  const missing = require
    .filter((role) => !signed.some(({ signature }) => signature.role === role))
    .map((role) => finding('signature-missing', 'finding', { start: 0, end: 0 }, `nobody has signed as ${role}`));
  return [...lapsed, ...missing];
};
