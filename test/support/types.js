// Checks the types of every part of the project against the environment that the part runs in.
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');
const repository = fileURLToPath(new URL('../../', import.meta.url));
const parts = ['.', 'src/node', 'src/cli', 'src/editor', 'src/renderer', 'test'];

const failed = parts.filter((part) => {
  // What is known from the last run is kept, so that only what has changed is checked again.
  const known = `node_modules/.cache/types/${part.replaceAll('/', '-')}.json`;
  const options = ['--noEmit', '--incremental', '--tsBuildInfoFile', known, '-p', `${part}/tsconfig.json`];
  const { status } = spawnSync(process.execPath, [compiler, ...options], { cwd: repository, stdio: 'inherit' });
  console.log(`types of ${part === '.' ? 'the core' : part}: ${status === 0 ? 'sound' : 'wrong'}`);
  return status !== 0;
});
console.log(`${parts.length - failed.length} passing\n${failed.length} failing`);
process.exitCode = failed.length > 0 ? 1 : 0;
