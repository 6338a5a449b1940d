// Function definitions: a body whose parameters all have types is checked once, where it stands (T3); else for its names.
import type * as ast from '../ast.ts';
import type { CheckedStatement } from '../checked.ts';
import type { Context } from './context.ts';
import { typeOfMark } from './declared.ts';
import { finish } from './finish.ts';
import { checkBody, instantiate } from './instances.ts';

export function checkFunction(c: Context, node: ast.FunctionDefinition): CheckedStatement {
  const types = node.parameters.map((p) => typeOfMark(p.type));
  const displays = node.parameters.map(() => null);
  const { inner } = checkBody(c, c.item, types, false, displays);
  c.problems.push(...inner.problems);
  for (const missing of inner.missing) c.missing.push(missing);
  for (const read of inner.reads) c.reads.add(read);
  for (const ground of inner.grounds) c.grounds.add(ground);
  for (const lost of inner.lost) c.lost.push(lost);
  const sound = !inner.problems.some((p) => p.severity === 'error') && inner.missing.length === 0;
  const whole = !sound || types.some(isOpen) || instantiate(c, c.item, types, false, displays, node.at) !== null;
  const checked = finish(c, null, { kind: 'nothing' });
  return { ...checked, failed: checked.failed || !whole };
}

function isOpen(type: ReturnType<typeof typeOfMark>): boolean {
  return type.is === 'unknown' || (type.is === 'list' && isOpen(type.of));
}
