// Verifying a folder of 1,000 sheets with the real program, from its start to its end, against verifying them one after the other in one thread.
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { verification } from '../../src/review/verification.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { recordSheet } from '../../src/run/record.ts';
import { onceTime, wallTime } from './measure.ts';
import type { BenchRow } from './row.ts';

const COUNT = 1000;

/** A sheet as people write them: four parts of six statements, its results recorded. */
function makeSheet(number: number): string {
  const part = (k: number) => `## Part ${k}

\`\`\`ampwright
P_${k} = ${5 + ((number + k) % 20)} kW from plate "M-${number}"
U_${k} = 400 V ± 2 % from plate "M-${number}"
I_${k}: A = fla_3ph(P_${k}, U_${k}, 92 %, 0.85)
R_${k}: ohm = U_${k} / I_${k}
shall I_${k} <= 80 A
shall R_${k} >= 1 ohm
\`\`\`
`;
  const text = `---\nampwright: 1\ntitle: Motor ${number}\n---\n\n# Motor ${number}\n\n${[0, 1, 2, 3].map(part).join('\n')}`;
  return recordSheet(evaluateSheet(text));
}

export function verifyBench(): BenchRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'ampwright-bench-'));
  try {
    const texts = Array.from({ length: COUNT }, (_, i) => makeSheet(i));
    for (const [i, text] of texts.entries()) {
      mkdirSync(join(folder, `${i % 20}`), { recursive: true });
      writeFileSync(join(folder, `${i % 20}`, `m${i}.ampwright.md`), text);
    }
    execFileSync(process.execPath, ['build.js']);
    const program = wallTime(() => execFileSync(process.execPath, ['dist/cli.js', 'verify', folder], { stdio: 'pipe' }), 3) / 1000;
    const alone = onceTime(() => texts.map((text) => verifyAlone(text)), 3) / 1000;
    return [
      {
        what: 'verify over 1,000 sheets, the whole program from start to end (against their texts in one warm thread)',
        aim: 'under 3 s on two processors',
        found: `${program.toFixed(2)} s (${(program / alone).toFixed(2)} of ${alone.toFixed(2)} s)`,
        holds: program < 3,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function verifyAlone(text: string) {
  return verification('m.ampwright.md', { evaluation: evaluateSheet(text), version: '1.0.0', on: 20_000, require: [] }, () => '');
}
