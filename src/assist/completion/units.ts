// Units: behind a number, and behind a colon with the other types.
import { findSymbol, spellings } from '../../units/catalogue.ts';
import type { Dimension } from '../../units/dimension.ts';
import { parseUnit } from '../../units/read-unit.ts';
import type { Unit } from '../../units/unit.ts';
import { fact } from '../hover/part.ts';
import { unitParts } from '../hover/unit.ts';
import { type Offer, offer } from './item.ts';
import type { Site } from './site.ts';
import { unitsOfSheet } from './units-of-sheet.ts';
import { wantedDimension, wantedUnit } from './wanted.ts';

/** Compound units that are common in the trade. */
const COMPOUND = [
  'mm²',
  'm²',
  'N·m',
  'ohm/km',
  'mohm/m',
  'A/mm²',
  'W·h',
  'kW·h',
  'm/s',
  'rad/s',
  '1/s',
  '1/h',
  '1/K',
  '%/K',
  'kg·m²',
  'm³/s',
  'W/(m·K)',
];

export function unitOffers(site: Site): readonly Offer[] {
  const isType = site.places.some(({ kind }) => kind === 'type');
  if (!isType && !site.places.some(({ kind }) => kind === 'unit')) return [];
  // A unit that touches its number is read as well; what is offered is written as the formatter has it.
  const gap = !isType && /[0-9]/.test(site.code.charAt(site.replaceAt.start - 1)) ? ' ' : '';
  const wanted: Wanted = isType ? NOTHING : { unit: wantedUnit(site), dimension: wantedDimension(site) };
  const used = unitsOfSheet(site.n.open);
  const known = [...new Set([...used, ...spellings(), ...COMPOUND])];
  return [...(isType ? typeOffers(site) : []), ...known.flatMap((spelling) => unitOffer(spelling, gap, wanted, used))];
}

interface Wanted {
  readonly unit: Unit | null;
  readonly dimension: Dimension | null;
}

const NOTHING: Wanted = { unit: null, dimension: null };

function unitOffer(spelling: string, gap: string, wanted: Wanted, used: ReadonlySet<string>): readonly Offer[] {
  const unit = parseUnit(spelling);
  if (!unit) return [];
  const symbol = findSymbol(spelling);
  const documentation = symbol ? unitParts(symbol).slice(2) : fact('unit of', dimensionWords(unit));
  const fits = wanted.dimension !== null && unit.dimension.si === wanted.dimension.si;
  const kind = wanted.unit === null || wanted.unit.power === unit.power ? 0 : 1.5;
  const rank = unit.text === wanted.unit?.text ? -1 : (fits ? kind : 2) + (used.has(spelling) ? 0 : 1);
  return [offer('unit', spelling, { detail: symbol?.name ?? '', documentation, insert: gap + spelling, rank })];
}

const dimensionWords = (unit: Unit): string => unit.parts.map((part) => part.symbol.name).join(', ');

/** What stands behind a colon besides units; `any` is of parameters only. */
function typeOffers({ item, before }: Site): readonly Offer[] {
  const inHead =
    before.some((token) => token.kind === 'punctuation' && token.mark === '(') &&
    !before.some((token) => token.kind === 'punctuation' && token.mark === '=');
  const parameter = inHead && (item === null || item.statement.kind === 'function' || item.statement.kind === 'unreadable');
  const words = [
    offer('word', '1', { detail: 'a plain number', rank: 1 }),
    offer('word', 'text', { detail: 'a text', rank: 1 }),
    offer('word', 'date', { detail: 'a day', rank: 1 }),
  ];
  return parameter ? [...words, offer('word', 'any', { detail: 'one value of any kind', rank: 1 })] : words;
}
