// Sums, products, quotients, powers and roots, made of pieces that are set already.
import { element, type ViewNode } from '../node.ts';
import { bound, grouped, infix, LEVEL, led, nodesOf, oneNode, parenthesised, piece, stacked, type Typeset, whole } from './typeset.ts';

/** a + b − c, with a part for each term. */
export function sum(terms: readonly { readonly minus: boolean; readonly operand: Typeset }[]): Typeset {
  const parts = terms.flatMap(({ minus, operand }, i) => {
    const set = whole(bound(operand, minus ? LEVEL.product : LEVEL.sum, i === 0 && !minus));
    if (i === 0) return minus ? led([sign()], set.parts) : set.parts;
    return led([infix(minus ? '−' : '+')], set.parts);
  });
  return { ...piece([], LEVEL.sum), parts, negative: terms[0]!.minus || terms[0]!.operand.negative };
}

/** −a. */
export function negated(operand: Typeset): Typeset {
  return piece([sign(), ...nodesOf(bound(operand, LEVEL.sign, false))], LEVEL.sign, 'word', true);
}

function sign(): ViewNode {
  return element('mo', { form: 'prefix' }, '−');
}

interface Quotient {
  readonly above: Typeset[];
  readonly below: Typeset[];
}

/** Reading from the left, `a·b / c / d · e` is the fraction (a·b)/(c·d) times e. */
export function product(factors: readonly { readonly inverse: boolean; readonly operand: Typeset }[]): Typeset {
  const quotients: Quotient[] = [];
  for (const { inverse, operand } of factors) {
    const last = quotients.at(-1);
    if (last && inverse) last.below.push(operand);
    else if (last && last.below.length === 0) last.above.push(operand);
    else quotients.push({ above: [operand], below: [] });
  }
  const set = quotients.flatMap((q) => (q.below.length === 0 ? q.above : [fraction(q)]));
  return set.length === 1 ? set[0]! : times(set);
}

function fraction(q: Quotient): Typeset {
  const side = (of: readonly Typeset[]) => grouped(stacked(of.length === 1 ? of[0]! : times(of)));
  return piece([element('mfrac', {}, side(q.above), side(q.below))], LEVEL.product, 'letter');
}

// Letters and roots stand side by side; where a word, a value or a bracket takes part, every factor gets its sign.
function times(factors: readonly Typeset[]): Typeset {
  const aside = factors.every((f, i) => f.shape === 'letter' || (f.shape === 'digit' && i === 0));
  const by = aside ? element('mo', { form: 'infix', lspace: '0', rspace: '0.17em' }, '\u2062') : infix('·');
  return joined(
    factors.map((f, i) => bound(f, LEVEL.product, i === 0)),
    by,
    LEVEL.product,
  );
}

/** Pieces with an operator between them, a part for each. */
export function joined(items: readonly Typeset[], operator: ViewNode, level: number): Typeset {
  const parts = items.flatMap((item, i) => (i === 0 ? item.parts : led([operator], item.parts)));
  return { ...piece([], level), parts, negative: items[0]?.negative ?? false };
}

/** A square root. */
export function root(of: Typeset): Typeset {
  return piece([element('msqrt', {}, ...stacked(of))], LEVEL.atom, 'letter');
}

/** A power; what is no single sign stands in parentheses. */
export function raised(base: Typeset, exponent: ViewNode): Typeset {
  const held = base.negative || base.level < LEVEL.atom ? parenthesised(base) : base;
  return piece([element('msup', {}, oneNode(held), exponent)], LEVEL.power, base.shape === 'letter' ? 'letter' : 'word');
}
