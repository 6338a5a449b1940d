// What a sheet shows, from its text: evaluated for real, and formulas as one line that a person can read.
import { evaluateSheet, type SheetEvaluation } from '../../src/run/evaluate.ts';
import type { FormulaParts, RowView } from '../../src/view/model.ts';
import type { ViewNode } from '../../src/view/node.ts';
import { toView } from '../../src/view/to-view.ts';

/** A sheet of one calc block, after optional prose (tables). */
export function sheetOf(code: string, before = ''): string {
  return `---\nampwright: 1\ntitle: Trial\n---\n\n${before}\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`;
}

export function evaluated(code: string, before = ''): SheetEvaluation {
  return evaluateSheet(sheetOf(code, before));
}

/** The rows of a sheet of one block. */
export function rowsOf(code: string, before = ''): readonly RowView[] {
  return toView(evaluated(code, before).result).cells[0]?.rows ?? [];
}

/** The row of an entry. */
export function entryOf(name: string, code: string, before = '') {
  const found = rowsOf(code, before).find((row) => row.kind === 'entry' && row.name === name);
  if (found?.kind !== 'entry') throw new Error(`no entry ${name}`);
  return found;
}

/** The first requirement. */
export function requirementOf(code: string, before = '') {
  const found = rowsOf(code, before).find((row) => row.kind === 'requirement');
  if (found?.kind !== 'requirement') throw new Error('no requirement');
  return found;
}

/** The first row of a kind. */
export function rowOf<K extends RowView['kind']>(kind: K, code: string, before = ''): Extract<RowView, { kind: K }> {
  const found = rowsOf(code, before).find((row) => row.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found as Extract<RowView, { kind: K }>;
}

/** MathML on one line: `{a}/{b}` a fraction, `√{x}`, `x^{2}`, `I_{n}`, `{a if c; b otherwise` cases; `|` where a line may break, `¶` where it does. */
export function mathText(parts: FormulaParts | null): string | null {
  if (parts === null) return null;
  return parts
    .map((part, i) => (typeof part !== 'string' && part.tag === 'br' ? '¶' : (i > 0 && !isBreak(parts[i - 1]!) ? '|' : '') + text(part)))
    .join('')
    .replaceAll('\u00A0', ' ');
}

function isBreak(node: ViewNode): boolean {
  return typeof node !== 'string' && node.tag === 'br';
}

function text(node: ViewNode): string {
  if (typeof node === 'string') return node;
  const all = () => node.children.map(text).join('');
  const [a, b, c] = node.children.slice(0, 3).map(text);
  switch (node.tag) {
    case 'mfrac':
      return `{${a}}/{${b}}`;
    case 'msqrt':
      return `√{${all()}}`;
    case 'msup':
      return `${a}^{${b}}`;
    case 'msub':
      return `${a}_{${b}}`;
    case 'msubsup':
      return `${a}_{${b}}^{${c}}`;
    case 'mspace':
      return ' ';
    case 'mtable':
      return node.children.map(text).join('; ');
    case 'mtr':
      return node.children.map(text).join(' ');
    case 'mo':
      return operator(node.children.map(text).join(''), node.attributes.form);
    default:
      return all();
  }
}

function operator(sign: string, form: string | undefined): string {
  if (sign === '\u2061' || sign === '\u2062') return sign === '\u2062' ? '\u2009' : '';
  if (sign === ',') return ', ';
  return form === 'infix' ? ` ${sign} ` : sign;
}
