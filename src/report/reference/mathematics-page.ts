// The page of the mathematics: constants and functions that belong to the notation itself.
import { BUILTINS } from '../../language/functions/index.ts';
import { exampleResult } from '../../run/example-result.ts';
import { escapeText } from '../../view/node.ts';
import { exampleFact, functionFacts } from './facts.ts';
import type { ReferencePage } from './frame.ts';
import { functionPlace } from './places.ts';

const FILE = 'mathematics.html';

/** The names that the page explains, each with its place. */
export const MATHEMATICS_PLACES: ReadonlyMap<string, string> = new Map(BUILTINS.map(({ name }) => [name, functionPlace(name)]));

export function mathematicsPage(): ReferencePage {
  const functions = BUILTINS.map((b) => {
    const takes = b.parameters.map(
      (p) => `<li><code>${escapeText(p.name)}</code> <span class="aw-unit">${escapeText(p.takes)}</span></li>`,
    );
    return functionFacts(
      {
        name: b.name,
        place: functionPlace(b.name),
        form: b.form,
        description: b.description,
        facts: [
          ['Formula', `<span class="aw-plainformula">${escapeText(b.formula)}</span>`],
          ['Parameters', `<ul class="aw-parameters">${takes.join('')}</ul>`],
          exampleFact(b.example, exampleResult(b)),
          ['Source', escapeText(b.source)],
        ],
      },
      2,
    );
  });
  return { file: FILE, title: 'Mathematics', part: 'notation', body: `${INTRODUCTION}\n${functions.join('\n')}` };
}

const INTRODUCTION = `<p>These functions belong to the notation and can't be defined again. A list in place of a single value maps the
call over the list. They work with units: <code>sqrt</code> halves every exponent of a unit, <code>min</code> and <code>sum</code> want one
dimension. Where there is no value (a negative root, a division by zero, an overflow) the entry has an error, and what needs it is not calculated.</p>
<p>Constants: <code>pi</code> (π), and <code>absolute_zero</code>, the point 0 K: <code>T - absolute_zero</code> is the absolute temperature of a
point <code>T</code>.</p>`;
