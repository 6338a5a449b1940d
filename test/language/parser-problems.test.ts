// What is said about broken lines, where, and what each mend makes of them: fixtures, to be read.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { golden } from '../support/golden.ts';
import { annotated } from '../support/parsing.ts';

const FOLDER = 'test/language/fixtures';

/** A fixture is cases below `## ` headings; lines that begin with `|` are what is expected and come from the parser. */
function refreshed(fixture: string): string {
  return fixture
    .split(/^(?=## )/m)
    .map((part) => {
      const [heading, ...lines] = part.trimEnd().split('\n');
      if (!heading!.startsWith('## ')) return `${part.trimEnd()}\n`;
      const source = lines.filter((line) => !line.startsWith('|')).map((line) => line.slice(2));
      while (source.at(-1) === '') source.pop();
      return `${heading}\n${annotated(source.join('\n'))}`;
    })
    .join('\n');
}

describe('problems of form', () => {
  for (const file of readdirSync(FOLDER).filter((name) => name.endsWith('.txt'))) {
    it(`are worded, placed and mended as in ${file}`, () => {
      const path = join(FOLDER, file);
      golden(path, refreshed(readFileSync(path, 'utf8')));
    });
  }
});
