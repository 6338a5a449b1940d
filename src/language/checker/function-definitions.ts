// Function definitions: a body whose parameters all have types is checked once, where it stands (T3); else for its names.
import type * as ast from '../ast.ts';
import type { CheckedStatement } from '../checked.ts';
import { nameProblem } from '../problems/names.ts';
import type { Context } from './context.ts';
import { typeOfMark } from './declared.ts';
import { finish } from './finish.ts';
import { CALL_DEPTH, checkBody, instantiate } from './instances.ts';

export function checkFunction(c: Context, node: ast.FunctionDefinition): CheckedStatement {
  const types = node.parameters.map((p) => typeOfMark(p.type));
  const displays = node.parameters.map(() => null);
  const { instance, inner } = checkBody(c, c.item, types, false, displays);
  c.problems.push(...inner.problems);
  for (const missing of inner.missing) c.missing.add(missing);
  for (const read of inner.reads) c.reads.add(read);
  for (const lost of inner.lost) c.lost.add(lost);
  const failed = inner.problems.some((p) => p.severity === 'error');
  if (!failed && inner.missing.size === 0 && !types.some(isOpen)) {
    instantiate(c, c.item, types, false, displays, node.at);
    if (instance.depth > CALL_DEPTH) c.problems.push(nameProblem('call-depth', node.at, { limit: CALL_DEPTH }));
  }
  const checked = finish(c, null, { kind: 'nothing' });
  return { ...checked, failed: failed || checked.failed };
}

function isOpen(type: ReturnType<typeof typeOfMark>): boolean {
  return type.is === 'unknown' || (type.is === 'list' && isOpen(type.of));
}
