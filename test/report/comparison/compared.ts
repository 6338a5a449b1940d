// Comparisons for the writers: one with something in every section, one full of markup, one with nothing.
import type { Comparisons } from '../../../src/review/comparisons.ts';
import { comparedSheet, notCompared, sameSheet } from '../../../src/review/comparisons.ts';
import { evaluateSheet } from '../../../src/run/evaluate.ts';

const compared = (old: string, now: string, path = 'calculations/a.ampwright.md') =>
  comparedSheet(path, null, evaluateSheet(old), evaluateSheet(now));

const sheet = (front: string, prose: string, code: string) =>
  `---\nampwright: 1\n${front}\n---\n\n# Starter\n\n${prose}\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`;

const table = (rating: number) =>
  `Table contactors — Range, invented\n\n| type | I_AC3 / A |\n| --- | --: |\n| K4 | 31.5 |\n| K5 | ${rating} |\n| K6 | 50 |\n`;

const OLD = sheet(
  'title: Starter for M-12\nrevision: A',
  `The drum starts on line.\n\n${table(40)}`,
  `P_n = 18.5 kW from plate "M-12"
pf = 0.84 from plate "M-12"
f(x) = 2 * x
y = f(3)
I_n: A = P_n / (√3 * 400 V * pf)
K = least I_AC3 of contactors where I_AC3 >= 1.1 * I_n
shall I_n <= 33 A because "AC-3 duty"
shall y <= 10
shall I_n <= 60 A
z = y + 1
action "Measure again" due 2026-12-15`,
);

const NEW = sheet(
  'title: Starter for M-12\nrevision: B',
  `The drum starts star-delta.\n\n${table(36)}`,
  `P_n = 19.5 kW from plate "M-12"
pf = 0.84 from datasheet "rev 2"
f(x) = 3 * x
y = f(3)
I_n: A = P_n / (√3 * 400 V * pf)
K = least I_AC3 of contactors where I_AC3 >= 1.1 * I_n
shall I_n <= 33 A because "AC-3 duty"
shall y <= 12
shall I_n <= 60 A
z = y + 1 A
action "Measure again" due 2027-01-15`,
);

/** Something in nearly every section. */
export const FULL: Comparisons = { old: 'main (1a2b3c4d5e, 2026-11-20)', new: 'work tree', sheets: [compared(OLD, NEW)] };

const markup = '<img src=x onerror=alert(1)> <!-- --> **b** [l](https://x.invalid) `c` | @osei #12 www.x.invalid $x$ ~s~';

/** Markup wherever a sheet may hold a text. */
export const MARKUP: Comparisons = {
  old: `<script>alert(1)</script>`,
  new: `a|b \`c\` ${markup}`,
  sheets: [
    compared(
      sheet(`title: a`, 'plain', `x = 1 V from plate "a"\nshall x <= 2 V because "a"\nn = "plain"\naction "a"`),
      sheet(
        `title: '${markup}'\nowner: '</style><script>'`,
        markup,
        `x = 1 V from plate "${markup}"\nshall x <= 2 V because "${markup}"\nn = "${markup}"\naction "${markup} </details>"`,
      ),
      `a|b<i>${markup}.ampwright.md`,
    ),
    notCompared('b', markup),
  ],
};

export const NOTHING: Comparisons = { old: 'a', new: 'b', sheets: [sameSheet('a', null)] };

/** Several sheets: one is new, one gone, one was moved, one can't be read. */
export const SEVERAL: Comparisons = {
  old: 'old',
  new: 'new',
  sheets: [
    compared(OLD, NEW, 'a.ampwright.md'),
    comparedSheet('b.ampwright.md', null, null, evaluateSheet(NEW)),
    comparedSheet('c.ampwright.md', null, evaluateSheet(OLD), null),
    comparedSheet('kiln/d.ampwright.md', 'd.ampwright.md', evaluateSheet(OLD), evaluateSheet(OLD.replace('18.5', '22'))),
    notCompared('e.ampwright.md', 'byte 3 (line 1) is not UTF-8; save it as UTF-8 first'),
    sameSheet('f.ampwright.md', null),
  ],
};

/** More changes than a comment holds. */
export const LONG: Comparisons = {
  old: 'old',
  new: 'new',
  sheets: [1, 2].map((factor) => {
    const code = (by: number) =>
      Array.from(
        { length: 900 },
        (_, i) => `x_${i} = ${i * by + factor} V from plate "number ${i} of the invented range"\ny_${i} = 2 * x_${i}`,
      ).join('\n');
    return compared(
      sheet('revision: A', 'a', `${code(1)}\nshall x_1 <= 2 V`),
      sheet('revision: B', 'b', `${code(7)}\nshall x_1 <= 2 V`),
      `sheet-${factor}.ampwright.md`,
    );
  }),
};
