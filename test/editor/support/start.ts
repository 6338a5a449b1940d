// Runs the editor tests with mocha inside the extension host, in Node and in the browser's worker alike.
import type MochaClass from 'mocha';
import { available, pictureOfFailure, print } from './ui.ts';

/** Loads and runs the test files; rejects when a test fails, which the editor turns into its exit code. */
export async function start(
  loadMocha: () => Promise<typeof MochaClass>,
  tests: readonly (() => Promise<unknown>)[],
  grep: string,
): Promise<void> {
  try {
    await loadAndRun(await loadMocha(), tests, grep);
  } catch (error) {
    if (available()) await print(error instanceof Error ? error.stack : error);
    throw error;
  }
}

async function loadAndRun(Mocha: typeof MochaClass, tests: readonly (() => Promise<unknown>)[], grep: string): Promise<void> {
  const mocha = new Mocha({ ui: 'bdd', reporter: 'spec', color: false, timeout: 60_000, slow: 5_000 });
  Mocha.reporters.Base.useColors = false; // a terminal is far from here, whatever the environment says
  mocha.suite.emit('pre-require', globalThis, null, mocha);
  if (grep) mocha.grep(grep);
  mocha.rootHooks({
    async afterEach(this: Mocha.Context) {
      await pictureOfFailure(this);
    },
  });
  for (const load of tests) await load();
  const printed = available() ? printToRunner(Mocha) : () => Promise.resolve();
  const failures = await new Promise<number>((resolve) => mocha.run(resolve));
  await printed();
  if (failures > 0) throw new Error(`${failures} of the editor tests failed`);
}

/** Sends the report's lines to the runner, whose output they are; in the editor's console they drown. Returns a wait for the last. */
function printToRunner(Mocha: typeof MochaClass): () => Promise<void> {
  let last = Promise.resolve();
  Mocha.reporters.Base.consoleLog = (...values) => {
    last = last.then(() => print(...values));
  };
  return () => last;
}
