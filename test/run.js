// Everything that must hold before a change lands, one stage after the other, and one closing line with all their counts.
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { stripVTControlCharacters } from 'node:util';

const repository = fileURLToPath(new URL('../', import.meta.url));
const node = process.execPath;
const tool = (name) => fileURLToPath(new URL(`../node_modules/.bin/${name}`, import.meta.url));

/** `counts: false`: a stage without tests of its own, which is one check that passes or fails as a whole. */
const stages = [
  { name: 'build', command: [node, 'build.js'], counts: false },
  { name: 'types', command: [node, 'test/support/types.js'], counts: true },
  { name: 'lint', command: [tool('biome'), 'check', '.'], counts: false },
  { name: 'unit tests', command: [tool('mocha'), '--forbid-only'], counts: true },
  { name: 'editor, Node host', command: [node, '--import', 'tsx', 'test/editor/run.ts', 'node'], counts: true },
  { name: 'editor, browser host', command: [node, '--import', 'tsx', 'test/editor/run.ts', 'browser'], counts: true },
  { name: 'editor, restricted mode', command: [node, '--import', 'tsx', 'test/editor/run.ts', 'restricted'], counts: true },
  { name: 'packages', command: [tool('mocha'), '--forbid-only', 'test/packages/packages.ts'], counts: true },
];

/** Runs a stage, showing its output as it comes, and returns its counts. */
function run({ name, command, counts }) {
  console.log(`\n=== ${name}`);
  const began = Date.now();
  const [program, ...args] = command;
  const child = spawn(program, args, { cwd: repository, stdio: ['ignore', 'pipe', 'inherit'] });
  let output = '';
  child.stdout.setEncoding('utf8').on('data', (text) => {
    output += text;
    process.stdout.write(text);
  });
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ name, passed: 0, failed: 1, why: error.message }));
    child.on('close', (code) => {
      const seconds = ((Date.now() - began) / 1000).toFixed(1);
      console.log(`--- ${name}: ${code === 0 ? 'done' : `exit code ${code}`} in ${seconds} s`);
      resolve({
        name,
        ...(counts ? counted(stripVTControlCharacters(output), code) : { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 }),
      });
    });
  });
}

/** What a reporter's summary says. A stage that ran nothing, or that ended badly without saying what failed, has failed once. */
function counted(output, code) {
  const sum = (word) => [...output.matchAll(new RegExp(`^\\s*(\\d+) ${word}\\b`, 'gm'))].reduce((total, [, n]) => total + Number(n), 0);
  const passed = sum('passing');
  const failed = sum('failing');
  if (passed + failed === 0) return { passed, failed: 1, why: 'no test ran' };
  if (code !== 0 && failed === 0) return { passed, failed: 1, why: `exit code ${code}` };
  return { passed, failed };
}

const wanted = process.argv.slice(2);
const results = [];
for (const stage of stages) if (wanted.length === 0 || wanted.some((word) => stage.name.includes(word))) results.push(await run(stage));

console.log();
for (const { name, passed, failed, why } of results) console.log(`${name}: ${passed} passed, ${failed} failed${why ? ` (${why})` : ''}`);
const total = (key) => results.reduce((sum, result) => sum + result[key], 0);
console.log(`\n${total('passed')} passed, ${total('failed')} failed`);
process.exitCode = total('failed') > 0 || results.length === 0 ? 1 : 0;
