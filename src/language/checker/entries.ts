// Entries: inputs with their source and instrument, and computed values with their declared unit (T7, T10).
import type * as ast from '../ast.ts';
import type { Checked, CheckedStatement } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { type Context, checkExpression, unknown } from './context.ts';
import { declare } from './declared.ts';
import { warnOfDegrees } from './degrees.ts';
import { describeChecked } from './describe.ts';
import { finish } from './finish.ts';
import { byInstrument } from './instruments.ts';
import { checkInputList } from './literals.ts';
import { enclose, withLocals } from './locals.ts';

export function checkEntry(c: Context, node: ast.Entry, sourcesRequired: boolean): CheckedStatement {
  const { result, locals } = withLocals(c, node.clauses.locals, node.value, true, () => {
    const list = node.value.kind === 'list' ? checkInputList(c, node.value, node.name.name) : null;
    return list ?? checkExpression(c, node.value);
  });
  let value = declare(c, result, node.type);
  if (node.reading !== null) value = byInstrument(c, value, node.reading);
  if (value.type.is === 'table') {
    c.problems.push(typeProblem('entry-type', node.value.at, { found: describeChecked(value) }));
    value = unknown(value.at);
  }
  if (isInput(node)) {
    checkSource(c, node, sourcesRequired);
    warnOfDegrees(c, node);
  }
  const body = enclose(value, locals);
  return finish(c, { type: withoutZero(body), display: body.display, uncertain: body.uncertain }, { kind: 'value', value: body });
}

function withoutZero(node: Checked): Checked['type'] {
  return node.type.is === 'quantity' && node.type.zero ? { ...node.type, zero: false } : node.type;
}

/** Whether an entry is an input: made of literals alone (T10). */
export function isInput(node: ast.Entry): boolean {
  return isLiteral(node.value);
}

function isLiteral(node: ast.Expression): boolean {
  switch (node.kind) {
    case 'quantity':
      return node.number !== 'pi';
    case 'date':
    case 'text':
    case 'yesno':
      return true;
    case 'readings':
      return node.of === null;
    case 'list':
      return node.items.every(isLiteral);
    case 'group':
      return isLiteral(node.inner);
    default:
      return false;
  }
}

function checkSource(c: Context, node: ast.Entry, required: boolean): void {
  const { source } = node.clauses;
  if (source === null && node.reading === null) {
    c.problems.push(typeProblem(required ? 'source-required' : 'no-source', node.name.at, { name: node.name.name }));
  }
  const literal = node.value;
  if (source?.kind === 'specification' && literal.kind === 'quantity' && literal.bounds !== null) {
    c.problems.push(typeProblem('specification-range', literal.bounds.at, {}));
  }
}
