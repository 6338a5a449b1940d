// Degrees written as `C` or `F`, which are the units of charge and of capacitance: when they are likelier, and what is said then.
import type { Edit, Mend } from '../../text/problem.ts';
import type { Unit } from '../../units/unit.ts';
import type * as ast from '../ast.ts';
import type { Checked } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { elementOf } from '../type.ts';
import type { Context } from './context.ts';

interface Scale {
  readonly degrees: string;
  readonly difference: string;
  /** What the symbol stands for in fact, `coulomb`, and the quantity that has it. */
  readonly unit: string;
  readonly quantity: string;
  /** Names of that quantity: its symbol in ISO 80000-6 with any index, or the word. */
  readonly names: RegExp;
}

const SCALES: Readonly<Record<string, Scale>> = {
  C: { degrees: 'degC', difference: 'K', unit: 'coulomb', quantity: 'charge', names: /^q(?![a-z])|charge/i },
  F: { degrees: 'degF', difference: 'degR', unit: 'farad', quantity: 'capacitance', names: /^c(?![a-z])|capaci/i },
};

function scaleOf(unit: Unit | null): Scale | undefined {
  return unit !== null && Object.hasOwn(SCALES, unit.text) ? SCALES[unit.text] : undefined;
}

/** ` (coulomb)` behind a `C`, since many who write it mean degrees. */
export function inFact(unit: Unit): string {
  const scale = scaleOf(unit);
  return scale === undefined ? '' : ` (${scale.unit})`;
}

/**
 * `T = 40 C`: an input in coulombs without a declared unit, whose name speaks of no charge, is a temperature more likely than not.
 * Declaring the unit says that the charge is meant.
 */
export function warnOfDegrees(c: Context, node: ast.Entry): void {
  const literals = literalsOf(node.value);
  const [first] = literals;
  const scale = first && scaleOf(first.unit);
  if (!first || !scale || node.type !== null || scale.names.test(node.name.name)) return;
  const edits = [...literals.flatMap((literal) => renamed(literal, scale.degrees)), ...boundsEdits(node.value, scale)];
  c.problems.push(
    typeProblem('degrees-likelier', first.unitAt ?? first.at, {
      symbol: first.unit!.text,
      unit: scale.unit,
      degrees: `${first.number} ${scale.degrees}`,
      quantity: scale.quantity,
      declared: `${node.name.name}: ${first.unit!.text} = …`,
      mends: [{ title: `Write \`${scale.degrees}\``, edits }],
    }),
  );
}

function literalsOf(node: ast.Expression): readonly ast.QuantityLiteral[] {
  switch (node.kind) {
    case 'quantity':
      return [node];
    case 'list':
      return node.items.flatMap(literalsOf);
    case 'readings':
      return node.items ?? [];
    case 'group':
      return literalsOf(node.inner);
    default:
      return [];
  }
}

/** Limits with degrees, half-widths with a difference. */
function boundsEdits(node: ast.Expression, scale: Scale): readonly Edit[] {
  if (node.kind === 'list') return node.items.flatMap((item) => boundsEdits(item, scale));
  if ((node.kind !== 'quantity' && node.kind !== 'readings') || node.bounds === null) return [];
  const { bounds } = node;
  if (bounds.kind === 'within') return [bounds.from, bounds.to].flatMap((limit) => renamed(limit, scale.degrees));
  return bounds.parts.flatMap((width) => renamed(width, scale.difference));
}

function renamed({ unit, unitAt }: ast.QuantityLiteral, text: string): readonly Edit[] {
  return unitAt !== null && scaleOf(unit) !== undefined ? [{ at: unitAt, text }] : [];
}

/** What is said, and offered, where a temperature was wanted and a literal in `C` or `F` was found. */
export function degreesInstead(found: Checked, wanted: Checked['type']): { readonly hint: string; readonly mends: readonly Mend[] } {
  const element = elementOf(wanted);
  const unit = found.display === 'auto' ? null : found.display;
  const scale = scaleOf(unit);
  if (scale === undefined || element.is !== 'quantity' || !element.point) return { hint: '', mends: [] };
  const written = found.kind === 'constant' && found.written !== null ? `${found.written} ${scale.degrees}` : null;
  return {
    hint: `; a temperature is written in ${scale.degrees}`,
    mends: written === null ? [] : [{ title: `Write \`${written}\``, edits: [{ at: found.at, text: written }] }],
  };
}
