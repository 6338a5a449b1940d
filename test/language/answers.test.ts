// What the notation answers, rule by rule: fixtures to be read, with every value, decision, problem and mend (UPDATE=1 rewrites them).
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { answered } from '../support/answers.ts';
import { golden } from '../support/golden.ts';

const FOLDER = 'test/language/answers';

/**
 * A fixture is cases below `## ` headings. Lines that begin with two blanks are the block, lines that begin with `>` are Markdown in
 * front of it (what stands above the first case is in front of all), lines that begin with `|` are what is expected.
 */
function refreshed(fixture: string): string {
  const [top = '', ...cases] = fixture.split(/^(?=## )/m);
  return [top.trimEnd(), ...cases.map((part) => refreshedCase(part, top))].join('\n\n').concat('\n');
}

function refreshedCase(part: string, top: string): string {
  const [heading, ...lines] = part.trimEnd().split('\n');
  const markdown = lines.filter((line) => line.startsWith('>'));
  const code = lines.filter((line) => !/^[|>]/.test(line)).map((line) => line.slice(2));
  while (code.at(-1) === '') code.pop();
  const before = [top, ...markdown].join('\n').replace(/^> ?/gm, '');
  return [heading, ...markdown, answered(code.join('\n'), { before }).trimEnd()].join('\n');
}

describe('the notation answers', () => {
  for (const file of readdirSync(FOLDER).filter((name) => name.endsWith('.txt'))) {
    it(`as in ${file}`, () => {
      const path = join(FOLDER, file);
      const fixture = readFileSync(path, 'utf8');
      assert.ok(fixture.includes('\n## '));
      golden(path, refreshed(fixture));
    });
  }
});
