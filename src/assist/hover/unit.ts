// A unit: its name, its size, and the publication that defines it.
import { displayUnit } from '../../units/display-unit.ts';
import { makeUnit } from '../../units/make-unit.ts';
import { fromSI, toSI } from '../../units/quantity.ts';
import { ONE } from '../../units/rational.ts';
import type { UnitSymbol } from '../../units/unit.ts';
import { code, fact, type HoverPart, text } from './part.ts';

export function unitParts(symbol: UnitSymbol): readonly HoverPart[] {
  return [code(symbol.symbol), text(symbol.name), ...fact('size', sizeOf(symbol)), ...fact('from', symbol.source)];
}

/** `1 hp = 745.6998715822702 W`, for units whose size is not told by their own name. */
function sizeOf(symbol: UnitSymbol): string | null {
  const unit = makeUnit([{ symbol, power: ONE }]);
  if (!unit || unit.point || unit.text === '') return null;
  const value = toSI('1', unit);
  const plain = displayUnit(unit.dimension, unit.power, false, 1);
  if (plain.text === unit.text) return null;
  return `1 ${unit.text} = ${fromSI(value, plain)}${plain.text === '' ? '' : ` ${plain.text}`}`;
}
