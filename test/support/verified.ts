// Verifications of real sheets, for the writers of findings.
import { type Verification, verification } from '../../src/review/verification.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { daysOf } from '../../src/text/date.ts';

/** A sheet with this calc block, verified at `path`. */
export function verified(path: string, code: string, require: readonly string[] = []): Verification {
  const text = `# Sheet\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`;
  return verification(path, { evaluation: evaluateSheet(text), version: '1.0.0', on: daysOf(2026, 12, 1)!, require }, () => '');
}

/** Findings of every level: a failed and an undecided requirement, an error, results that are not recorded, a missing signature. */
export const MIXED = verified(
  'calculations/kiln & drum/a, b: c.ampwright.md',
  `I_n = 41 A ± 1 A        from plate "M-12 <script>"
I_AC3 = 40 A            from datasheet "K5 ]]> & \\"60 %\\""
shall I_n <= 30 A       because "too much"
should I_n <= I_AC3
shall I_n <= 50 A
x = 3 V + 2 A`,
  ['checked'],
);

/** Nothing to find. */
export const SOUND = verified('calculations/sound.ampwright.md', '');

/** The same finding many times. */
export const MANY = verified(
  'many.ampwright.md',
  Array.from({ length: 14 }, (_, i) => `x_${i} = 1 V + ${i + 1} A\nshall ${i + 2} <= 1`).join('\n'),
);
