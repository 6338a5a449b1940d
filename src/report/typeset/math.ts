// Mathematics: the view's MathML as Typst's equations, each with a text for readers who don't see it.
import { type ElementNode, textOf, type ViewNode } from '../../view/node.ts';
import { array, type Code, call, EMPTY, joined, named, quoted, showable } from './code.ts';
import { mathText } from './math-text.ts';

/** One `math` element as an equation that stays on its line. */
export function equation(math: ElementNode): Code {
  const inner = row(math.children);
  return call('eq', quoted(mathText(math) || 'formula'), math.attributes.displaystyle === 'true' ? call('math.display', inner) : inner);
}

/** What stands in an equation. */
export function inMath(node: ViewNode): Code {
  if (typeof node === 'string') return upright(node);
  const { children } = node;
  switch (node.tag) {
    case 'mi':
      return letters(node);
    case 'mn':
    case 'mtext':
      return upright(textOf(node));
    case 'mo':
      return operator(node);
    case 'mspace':
      return call('h', length(node.attributes.width));
    case 'mfrac':
      return call('math.frac', part(children[0]), part(children[1]));
    case 'msqrt':
      return call('math.sqrt', row(children));
    case 'mroot':
      return call('math.root', part(children[1]), part(children[0]));
    case 'msub':
      return call('math.attach', part(children[0]), named('b', part(children[1])));
    case 'msup':
      return call('math.attach', part(children[0]), named('t', part(children[1])));
    case 'msubsup':
      return call('math.attach', part(children[0]), named('b', part(children[1])), named('t', part(children[2])));
    case 'mtable':
      return lines(node);
    default:
      return row(children);
  }
}

function part(node: ViewNode | undefined): Code {
  return node === undefined ? EMPTY : inMath(node);
}

/** Nodes side by side; brackets that grow are paired with what they hold. */
function row(nodes: readonly ViewNode[]): Code {
  const codes: Code[] = [];
  for (let i = 0; i < nodes.length; i++) {
    const node = nodes[i]!;
    const end = growsAt(node) ? closing(nodes, i) : -1;
    if (end < 0) codes.push(inMath(node));
    else {
      codes.push(
        call('math.lr', joined([inMath(node), row(nodes.slice(i + 1, end)), ...(end < nodes.length ? [inMath(nodes[end]!)] : [])])),
      );
      i = end;
    }
  }
  return joined(codes);
}

function growsAt(node: ViewNode): node is ElementNode {
  return (
    typeof node === 'object' &&
    node.tag === 'mo' &&
    node.attributes.form === 'prefix' &&
    node.attributes.stretchy !== 'false' &&
    isBracket(node)
  );
}

/** Where the bracket opened at `open` closes; the end of the list where it is open on the right, like the brace of cases. */
function closing(nodes: readonly ViewNode[], open: number): number {
  let depth = 0;
  for (let i = open; i < nodes.length; i++) {
    const node = nodes[i]!;
    if (typeof node === 'string' || node.tag !== 'mo' || !isBracket(node)) continue;
    depth += node.attributes.form === 'prefix' ? 1 : node.attributes.form === 'postfix' ? -1 : 0;
    if (depth === 0) return i;
  }
  return nodes.length;
}

function isBracket(node: ElementNode): boolean {
  return /^[()[\]{}|]$/.test(textOf(node));
}

/** A name: one letter is slanted like every quantity, a word stands upright. */
function letters(node: ElementNode): Code {
  const text = textOf(node);
  return node.attributes.mathvariant === 'normal' || [...text].length !== 1 || showable(text) !== text
    ? upright(text)
    : call('sign', quoted(text));
}

function upright(text: string): Code {
  return quoted(text);
}

const RELATIONS = new Set('=≤≥<>≠');

function operator(node: ElementNode): Code {
  const sign = textOf(node);
  const { form, lspace, rspace, separator } = node.attributes;
  if (sign === '\u2061' || sign === '') return EMPTY;
  if (sign === '\u2062') return call('h', length(rspace));
  const set = [...sign].length === 1 ? call('sign', quoted(sign)) : quoted(sign);
  if (isBracket(node) && form !== 'infix')
    return call('math.class', form === 'prefix' ? '"opening"' : form === 'postfix' ? '"closing"' : '"normal"', set);
  if (separator === 'true') return call('math.class', lspace === '0' && rspace === '0.1em' ? '"normal"' : '"punctuation"', set);
  if (lspace === '0') return call('math.class', '"normal"', set);
  const kind = form === 'prefix' ? '"unary"' : RELATIONS.has(sign) ? '"relation"' : '"binary"';
  return call('math.class', kind, set);
}

/** Lines of cases, or of a long half of a fraction. */
function lines(node: ElementNode): Code {
  const rows = node.children.flatMap((line) =>
    typeof line === 'string' ? [] : [array(line.children.map((cell) => call('math.display', inMath(cell))))],
  );
  const align = node.attributes.class === 'aw-cases' ? 'left' : 'center';
  return call('math.mat', 'delim: none', named('align', align), 'row-gap: 0.4em', 'column-gap: 0.8em', ...rows);
}

/** A length in em, as MathML has it; nothing else is taken over. */
function length(text: string | undefined): Code {
  return /^(?:\d+(?:\.\d+)?|\.\d+)em$/.test(text ?? '') ? text! : '0em';
}
