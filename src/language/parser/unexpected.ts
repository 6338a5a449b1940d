// What is said where a value is complete and something follows that is neither operator nor clause (#1, #10).
import { cover, type Span, span } from '../../text/span.ts';
import { parseUnit } from '../../units/read-unit.ts';
import { suggestUnits } from '../../units/suggest-unit.ts';
import { likelyWords, OTHER_CHOICES } from '../other-words.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { Token } from '../token.ts';
import { type Cursor, isContextual, isMark, isOperator, isWord, peek, previous, report, textOf } from './cursor.ts';
import { isNumeric } from './literals.ts';

/** The words that begin an expression which is an operand only in parentheses. */
const WHOLE: ReadonlySet<string> = new Set(['if', 'the', 'least', 'greatest', 'first']);

/** Reports the token at the cursor, which can't follow the value before it; of two values side by side the second is read. */
export function valueBehindValue(c: Cursor): void {
  const token = peek(c);
  if (token === undefined || c.failed) return;
  const left = previous(c);
  if (token.kind === 'plusminus') report(c, () => syntaxProblem('limits-behind-value', token.at, {}));
  else if (isMark(c, ',')) report(c, () => syntaxProblem('list-without-brackets', token.at, {}));
  else if (isMark(c, '[') && !isNumeric(left)) report(c, () => syntaxProblem('list-index', token.at, {}));
  else if (isMark(c, '(') && isNumeric(left) && isContextual(c, 'k', 1)) report(c, () => syntaxProblem('coverage-alone', token.at, {}));
  else if (isContextual(c, 'k') && isMark(c, '=', 1) && isNumeric(left)) report(c, () => syntaxProblem('coverage-form', token.at, {}));
  else if (beginsValue(c)) sideBySide(c, left, token);
  else report(c, () => syntaxProblem('unexpected', token.at, { found: textOf(c, token.at) }));
}

function beginsValue(c: Cursor): boolean {
  const token = peek(c)!;
  if (token.kind === 'punctuation') return isMark(c, '(') || isMark(c, '[');
  if (token.kind === 'operator') return isOperator(c, '√');
  if (token.kind === 'word') return WHOLE.has(token.word) || ['row', 'yes', 'no'].includes(token.word);
  return !['plusminus', 'superscript', 'unit', 'error'].includes(token.kind);
}

/** Two values with nothing between them. The right one is read, so that the mend holds the whole of it. */
function sideBySide(c: Cursor, left: Token, right: Token): void {
  c.failed = true;
  c.grammar.primary(c);
  c.failed = false;
  const whole = span(right.at.start, Math.max(right.at.end, previous(c).at.end));
  report(c, () => describe(c, left, right, whole));
}

function describe(c: Cursor, left: Token, right: Token, whole: Span) {
  const [leftText, rightText] = [textOf(c, left.at), textOf(c, right.at)];
  const at = cover(left.at, whole);
  const product = `${leftText} ${isSumOfUnits(left, right) ? '+' : '*'} ${textOf(c, whole)}`;
  const complete = left.kind !== 'punctuation' && !(right.kind === 'word' && WHOLE.has(right.word));
  const joined = left.kind === 'name' && right.kind === 'name' ? `${leftText}_${rightText}` : null;
  const operator = () => syntaxProblem('missing-operator', at, { product: complete ? product : null, joined, behind: left.at.end });
  const choices = left.kind === 'name' && isWord(c, 'of') ? likelyWords(left.name, OTHER_CHOICES, WHOLE) : [];
  if (choices.length > 0) return syntaxProblem('misspelt-choice', left.at, { word: leftText, near: choices });
  const bracketed = bracketedUnit(c, left, whole);
  if (bracketed !== null) return syntaxProblem('unit-in-brackets', at, { written: `${leftText} ${bracketed}` });
  if (right.kind !== 'name') return operator();
  if (left.kind === 'quantity' && CURRENTS.has(rightText))
    return syntaxProblem('current-kind', at, { found: rightText, written: `${leftText} "${rightText}"` });
  const unit = isUnit(rightText);
  if (!isNumeric(left)) return unit ? syntaxProblem('unit-behind-value', at, { unit: rightText, behind: left.at.end }) : operator();
  if (left.text === 'pi') return unit ? syntaxProblem('unit-behind-pi', at, { product }) : operator();
  if (left.kind === 'quantity') {
    const symbol = unit ? rightText : respelt(rightText);
    if (symbol === null || left.unit.text.includes('/')) return operator();
    return syntaxProblem('space-in-unit', cover(left.at, right.at), { joined: withoutSpace(leftText, left.unit.text, symbol) });
  }
  if (unit) return syntaxProblem('no-unit-here', at, { unit: rightText, product });
  const near = nearUnits(rightText);
  return near.length === 0 ? operator() : syntaxProblem('unknown-unit', at, { unit: rightText, near, product, unitAt: right.at });
}

/** `10 min 30 s`, `5 ft 3 in`. */
function isSumOfUnits(left: Token, right: Token): boolean {
  if (left.kind !== 'quantity' || right.kind !== 'quantity' || left.unit.point) return false;
  return left.unit.dimension.si === right.unit.dimension.si && left.unit.text !== right.unit.text;
}

/** What plates write behind a voltage or a current. */
const CURRENTS: ReadonlySet<string> = new Set(['AC', 'DC', 'ac', 'dc']);

/** The unit of `18.5 [kW]`; null for anything else behind a number. */
function bracketedUnit(c: Cursor, left: Token, behind: Span): string | null {
  if (left.kind !== 'number') return null;
  const inner = /^\[\s*(\S+)\s*\]$/.exec(textOf(c, behind))?.[1] ?? '';
  return isUnit(inner) ? inner : null;
}

/** Whether the word as it stands is a unit of the catalogue. */
export function isUnit(word: string): boolean {
  return parseUnit(word) !== null;
}

/** A text that ends with `unit` and the symbol behind it: a product, but `40 degC` of `40 deg C`. */
export function withoutSpace(text: string, unit: string, symbol: string): string {
  return parseUnit(unit + symbol)?.point === true ? text + symbol : `${text}·${symbol}`;
}

/** The unit that is written with plain digits: `m²` for `m2`. */
function respelt(word: string): string | null {
  return nearUnits(word).find((near) => near.normalize('NFKC') === word) ?? null;
}

/** Units that a word was likely meant for; a word with `_` was meant for a name. */
export function nearUnits(word: string): readonly string[] {
  return word.includes('_') || word.length > 24 ? [] : suggestUnits(word);
}
