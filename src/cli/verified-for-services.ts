// What `verify` found, in the forms that other services read: SARIF, JUnit XML, GitHub Actions.
import { appendFileSync, existsSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { version } from '../../package.json';
import { githubAnnotations, githubSummary } from '../report/github.ts';
import { junitXml } from '../report/junit.ts';
import { sarifLog } from '../report/sarif.ts';
import type { Print } from './verified.ts';

export const asSarif: Print = (verifications, _, stream) => stream.write(sarifLog(verifications, version, pathIn(sourcesRoot())));

export const asJunit: Print = (verifications, _, stream) => stream.write(junitXml(verifications));

/** Annotations go to standard output; the job's summary to the file that GitHub names in the environment, if it does. */
export const asGithub: Print = (verifications, _, stream) => {
  stream.write(githubAnnotations(verifications, pathIn(sourcesRoot())));
  const summary = process.env['GITHUB_STEP_SUMMARY'];
  if (summary) appendFileSync(summary, githubSummary(verifications));
};

/** What services count paths from: the repository's root, else the current folder. */
function sourcesRoot(): string {
  const here = process.cwd();
  for (let at = here; ; at = dirname(at)) {
    if (existsSync(join(at, '.git'))) return at;
    if (at === dirname(at)) return here;
  }
}

function pathIn(root: string): (file: string) => string | null {
  return (file) => {
    const way = relative(root, resolve(file));
    return way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way) ? null : way.split(sep).join('/');
  };
}
