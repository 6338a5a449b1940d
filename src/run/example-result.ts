// What the example of a function gives.
import { evaluateSheet } from './evaluate.ts';
import type { FunctionDescription } from './function-list.ts';

/** The value of the example's call as a sheet shows it; null where there is no example. */
export function exampleResult({ example }: Pick<FunctionDescription, 'example'>): string | null {
  if (example === null) return null;
  return evaluateSheet(`\`\`\`ampwright\nexample = ${example}\n\`\`\`\n`).result.entries.get('example')?.value?.text ?? null;
}
