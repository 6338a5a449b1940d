// What happens to a sheet that something else changes while it is read, calculated and written: that change stays, and is told.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { ampwright } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const SHEET = 's.ampwright.md';
const TEXT = '# Starter, invented\n\n```ampwright\nU = 230 V from plate "M-12"\nV = 2 * U\n```\n';
const BY_A_COLLEAGUE = TEXT.replace('230 V', '400 V');

// Loaded before the program: does to the sheet what a colleague does, at a moment that no timing hits each time.
const MEANWHILE = `
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
const { MOMENT, CHANGE, TEXT } = process.env;
const { writeFileSync, rmSync, renameSync } = fs;
const { open, realpath } = fs.promises;
let done = false;
function colleague() {
  if (done) return;
  done = true;
  if (CHANGE === 'removed') return rmSync('${SHEET}');
  writeFileSync(CHANGE === 'replaced' ? 'other' : '${SHEET}', TEXT);
  if (CHANGE === 'replaced') renameSync('other', '${SHEET}');
}
// Where the writing begins.
fs.promises.realpath = (...args) => {
  if (MOMENT === 'while it is calculated') colleague();
  return realpath(...args);
};
fs.promises.open = async (path, flags, ...more) => {
  const file = await open(path, flags, ...more);
  if (MOMENT === 'while the new one is written' && flags === 'wx') {
    const sync = file.sync.bind(file);
    file.sync = async () => (colleague(), sync());
  }
  return file;
};
syncBuiltinESMExports();
`;

const COMMANDS: readonly (readonly [name: string, args: readonly string[], said: string])[] = [
  ['record', ['record', SHEET], 'was not written'],
  ['sign', ['sign', SHEET, '--role', 'checked', '--name', 'R. Osei', '--on', '2026-11-20'], 'was not signed'],
];

const MOMENTS = ['while it is calculated', 'while the new one is written'];

const CHANGES: readonly (readonly [change: string, because: string])[] = [
  ['written', 'it was changed by something else since it was read'],
  ['replaced', 'it was changed by something else since it was read'],
  ['removed', 'it has been removed since it was read'],
];

describe('a sheet that something else changes meanwhile', function () {
  this.timeout(120_000);
  const folder = temporaryFolder();

  for (const [name, args, said] of COMMANDS) {
    for (const moment of MOMENTS) {
      for (const [change, because] of CHANGES) {
        it(`${name} leaves as it is then: ${change} ${moment}`, async () => {
          folder.write(SHEET, TEXT);
          if (name === 'sign') await ampwright(['record', SHEET], { cwd: folder.path });
          const hook = folder.write('hook.mjs', MEANWHILE);
          const env = { NODE_OPTIONS: `--import=${pathToFileURL(hook).href}`, MOMENT: moment, CHANGE: change, TEXT: BY_A_COLLEAGUE };
          const { code, stdout, stderr } = await ampwright(args, { cwd: folder.path, env });
          assert.deepEqual([code, stdout, stderr], [2, '', `error: ${SHEET} ${said}: ${because}\n`]);
          const left = readdirSync(folder.path).filter((file) => file !== 'hook.mjs');
          assert.deepEqual(left, change === 'removed' ? [] : [SHEET]);
          if (change !== 'removed') assert.equal(readFileSync(folder.at(SHEET), 'utf8'), BY_A_COLLEAGUE);
        });
      }
    }
  }
});
