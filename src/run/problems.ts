// Words for what is wrong with using other files.
import { kind, problemMaker } from '../text/problem.ts';

export const useProblem = problemMaker({
  'use-refused': kind('error', (f: { path: string; reason: string }) => `\`${f.path}\` can't be used: ${f.reason}`),
  'use-circle': kind('error', (f: { paths: readonly string[] }) => `these sheets use each other in a circle: ${f.paths.join(' → ')}`),
  'use-depth': kind('error', (f: { limit: number }) => `sheets use each other more than ${f.limit} deep`),
  'use-unknown': kind('error', (f: { name: string; path: string }) => `\`${f.path}\` does not define \`${f.name}\``),
  'use-errors': kind(
    'error',
    (f: { path: string; count: number; first: string }) =>
      `\`${f.path}\` has ${f.count === 1 ? 'an error' : `${f.count} errors`}: ${f.first}`,
  ),
  'table-refused': kind('error', (f: { path: string; reason: string }) => `\`${f.path}\` can't be read: ${f.reason}`),
});
