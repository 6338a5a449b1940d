// Where an input may stand: `±` and `readings` have a name of their own, so that they can have a source (L10, T10).
import { span } from '../../text/span.ts';
import type { Expression } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import { type Cursor, report, textOf } from './cursor.ts';

const LITERALS: ReadonlySet<string> = new Set(['quantity', 'readings', 'date', 'text', 'yesno']);

/** `value` is the right side of an entry: it may be an input, or a list made of them. */
export function onlyInputs(c: Cursor, value: Expression): void {
  if (c.uncertain.length === 0) return;
  const list = value.kind === 'list' && value.items.every((item) => LITERALS.has(item.kind));
  const inputs: ReadonlySet<Expression> = new Set(list ? value.items : [value]);
  reportInputs(
    c,
    c.uncertain.filter((node) => !inputs.has(node)),
  );
}

/** Nowhere but on the right side of an entry does an input stand. */
export function noInputs(c: Cursor): void {
  reportInputs(c, c.uncertain);
}

function reportInputs(c: Cursor, nodes: readonly Expression[]): void {
  const [first] = nodes;
  if (first !== undefined) {
    report(c, () => {
      const name = freeName(c);
      const lineEnd = c.text.includes('\r\n') ? '\r\n' : '\n';
      const { start } = c.tokens[c.start]!.at;
      return syntaxProblem('uncertain-needs-name', first.at, {
        name,
        line: `${name} = ${textOf(c, first.at)}${lineEnd}`,
        above: span(start, start),
      });
    });
  }
  c.uncertain.length = 0;
}

/** A name that the block does not have yet: `y_1` for a part of `y`. */
function freeName(c: Cursor): string {
  const [first, second] = [c.tokens[c.start]!, c.tokens[c.start + 1]];
  const defined = first.kind === 'name' && second?.kind === 'punctuation' ? textOf(c, first.at) : 'value';
  const taken = new Set(c.tokens.map((token) => textOf(c, token.at)));
  let number = 1;
  while (taken.has(`${defined}_${number}`)) number++;
  return `${defined}_${number}`;
}
