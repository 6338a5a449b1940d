// The documents say what is so: examples give the results shown, files and tests that are named exist, every package has its reason.
import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { terminal } from '../src/cli/terminal.ts';
import { evaluateSheet } from '../src/run/evaluate.ts';
import { recordedResults } from '../src/run/record.ts';
import { readResults } from '../src/sheet/results-block.ts';

const read = (name: string) => readFileSync(name, 'utf8');

/** The text of indented code blocks, their indentation taken off. */
function indentedBlocks(markdown: string): readonly string[] {
  return [...markdown.matchAll(/(?:^|\n\n)((?: {4}.*\n| *\n(?= {4}))+)/g)].map(([, block]) => block!.replace(/^ {4}/gm, ''));
}

describe('the documents', () => {
  it('README shows a sheet and the results that it really has', () => {
    const blocks = indentedBlocks(read('README.md'));
    const code = blocks.find((block) => block.startsWith('```ampwright'))!;
    const results = blocks.find((block) => block.startsWith('<!-- results -->'))!;
    const evaluation = evaluateSheet(code);
    assert.deepEqual(evaluation.problems, []);
    assert.deepEqual(readResults(results.trim()), recordedResults(evaluation).get(0));
  });

  for (const document of ['README.md', 'DEVELOPERS.md', 'MEASUREMENTS.md', 'CHANGELOG.md'])
    it(`${document} names only files that are there`, () => {
      const text = read(document);
      const links = [...text.matchAll(/\]\((?!https?:)([^)#]+)\)/g)].map(([, path]) => path!);
      const paths = [...text.matchAll(/`((?:src|test|samples|syntax|templates|media|\.ci)\/[\w./-]*)`/g)].map(([, path]) => path!);
      for (const path of [...links, ...paths]) assert.ok(existsSync(path), `${path} is not there`);
      assert.ok(['MEASUREMENTS.md', 'CHANGELOG.md'].includes(document) || links.length + paths.length > 3);
    });

  it('DEVELOPERS describes every folder of src/ and test/, and names every package with its reason', () => {
    const text = read('DEVELOPERS.md');
    const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Record<string, Record<string, string>>;
    const stdlib = '@stdlib/math-base-special-';
    for (const name of Object.keys({ ...dependencies, ...devDependencies })) {
      if (name.startsWith('@types/')) continue;
      const shown = name.startsWith(stdlib) ? `${stdlib}*` : name;
      assert.ok(text.includes(`\`${shown}\``), `${name} has no reason in DEVELOPERS.md`);
    }
    const folders = readdirSync('src');
    for (const name of folders) assert.ok(text.includes(`\`src/${name}/\``), `src/${name} is not described`);
    for (const { name } of readdirSync('test', { withFileTypes: true }).filter((entry) => entry.isDirectory()))
      assert.ok(folders.includes(name) || text.includes(`\`${name}/\``), `test/${name} is not described`);
  });

  it('README lists every command', async () => {
    const { COMMANDS } = await import('../src/cli/commands.ts');
    const { Command } = await import('commander');
    const program = new Command();
    for (const declare of COMMANDS) declare(program, { terminal: terminal(), end: () => undefined, file: new URL(import.meta.url) });
    const text = read('README.md');
    for (const command of program.commands) assert.ok(text.includes(`| \`${command.name()} `), `${command.name()} is missing`);
  });
});
