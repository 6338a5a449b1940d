// Adds a signature to the front matter, or renews the one that is there; everything else keeps its bytes.
import { isMap, isScalar, isSeq, type Node, stringify, type YAMLMap, type YAMLSeq } from 'yaml';
import type { Edit } from '../text/problem.ts';
import { span } from '../text/span.ts';
import { isSignatures } from './digest.ts';
import { applyEdits } from './edits.ts';
import { fileLines, lineEndFrom } from './file-lines.ts';
import { readFrontMatter, type Signature } from './front-matter.ts';
import { frontMatterCode, frontMatterEnd } from './front-matter-lines.ts';
import { asNode, keyText, type Pair, readPair, readSections } from './yaml-sections.ts';

/** What a signature says, without its place. */
export type SignatureEntry = Omit<Signature, 'at'>;

type Field = readonly [key: string, value: string];

/**
 * The sheet's text with this signature: the entry of the same role and name renewed, or a new one behind the others. A sheet without
 * front matter gets one. Null where the signatures that are there can't be read: they must be put right first.
 */
export function withSignature(text: string, entry: SignatureEntry): string | null {
  const lines = fileLines(text);
  const end = frontMatterEnd(lines);
  const lineEnd = lineEndFrom(text, 0);
  if (end === 0) {
    const block = ['---', listOf(entry, '  ', lineEnd), '---', '', ''].join(lineEnd);
    return applyEdits(text, [{ at: span(lines.start(0), lines.start(0)), text: block }]);
  }
  const code = frontMatterCode(lines, end);
  const section = readSections(text, code).find(({ at }) => isSignatures(text.slice(at.start, at.end)));
  if (!section) {
    const list = listOf(entry, '  ', lineEnd);
    const edit = { at: span(code.end, code.end), text: code.end > code.start ? lineEnd + list : list + lineEnd };
    return ifSignedBy(applyEdits(text, [edit]), entry);
  }
  const pair = readPair(text, section, []);
  const edits = pair && (renewal(text, pair, entry, lineEnd) ?? addition(text, pair, section.at.end, entry, lineEnd));
  return edits && ifSignedBy(applyEdits(text, edits), entry);
}

/** The text if the entry is among the signatures that are read: one in a list with aliases in it, for one, is not. */
function ifSignedBy(text: string, { role, name, covers }: SignatureEntry): string | null {
  const lines = fileLines(text);
  const { signatures } = readFrontMatter(text, frontMatterCode(lines, frontMatterEnd(lines)), []);
  const found = signatures.some((its) => its.role === oneLine(role) && its.name === oneLine(name) && its.covers === covers);
  return found ? text : null;
}

/** The key with a list of this one entry. */
function listOf(entry: SignatureEntry, indent: string, lineEnd: string): string {
  return `signatures:${lineEnd}${item(entry, indent, lineEnd)}`;
}

function item(entry: SignatureEntry, indent: string, lineEnd: string): string {
  return fields(entry)
    .map(([key, value], i) => `${indent}${i === 0 ? '- ' : '  '}${key}: ${blockText(value)}`)
    .join(lineEnd);
}

function fields(entry: SignatureEntry): readonly Field[] {
  const { role, name, date, covers, version } = entry;
  const all: Field[] = [['role', role], ['name', name], ['date', date], ['covers', covers]]; // biome-ignore format: one line a signature
  return version === null ? all : [...all, ['version', version]];
}

/** A text as a YAML scalar on one line, quoted where any reader of YAML would take it for something else. */
function blockText(value: string): string {
  return stringify(oneLine(value), { lineWidth: 0 }).trimEnd();
}

/** The same inside brackets, where commas and brackets mean something: JSON's strings are YAML's. */
function flowText(value: string): string {
  return JSON.stringify(oneLine(value));
}

function oneLine(value: string): string {
  return value.replace(/\s+/g, ' ').trim();
}

/** Changes to the entry of the same role and name, or null where there is none. */
function renewal(text: string, pair: Pair, entry: SignatureEntry, lineEnd: string): readonly Edit[] | null {
  if (!isSeq(pair.node)) return null;
  const same = pair.node.items.find(
    (map) => isMap(map) && textAt(map, 'role') === oneLine(entry.role) && textAt(map, 'name') === oneLine(entry.name),
  );
  return isMap(same) ? fields(entry).flatMap((field) => renewField(text, pair, same, field, lineEnd)) : null;
}

function textAt(map: YAMLMap, key: string): string | null {
  const node: unknown = map.get(key, true);
  return isScalar(node) ? oneLine(String(node.value ?? '')) : null;
}

function renewField(text: string, pair: Pair, map: YAMLMap, [key, value]: Field, lineEnd: string): readonly Edit[] {
  if (textAt(map, key) === oneLine(value)) return [];
  const written = map.flow ? flowText(value) : blockText(value);
  const there = map.items.find((item) => keyText(item.key) === key);
  if (there) {
    const at = pair.placeOf(asNode(there.value));
    if (!at) return [];
    const gap = at.start === at.end && /\S/.test(text[at.start - 1] ?? '') ? ' ' : '';
    return [{ at, text: gap + written }];
  }
  const first = pair.placeOf(asNode(map.items[0]?.key))!;
  const { end } = pair.placeOf(asNode(map.items.at(-1)?.value) ?? asNode(map.items.at(-1)?.key))!;
  if (map.flow) return [{ at: span(end, end), text: `, ${key}: ${written}` }];
  const lineAt = endOfLine(text, end);
  return [{ at: span(lineAt, lineAt), text: `${lineEnd}${' '.repeat(column(text, first.start))}${key}: ${written}` }];
}

/** Changes that put the entry behind the others, or null where there is no list. `end` is the end of the section's last line. */
function addition(text: string, pair: Pair, end: number, entry: SignatureEntry, lineEnd: string): readonly Edit[] | null {
  const { node } = pair;
  const inline = fields(entry).map(([key, value]) => `${key}: ${flowText(value)}`).join(', '); // biome-ignore format: as it is written
  if (isSeq(node) && node.items.length > 0)
    return [node.flow ? behindLast(pair, node, inline) : newItem(text, pair, node, end, entry, lineEnd)];
  if (!isEmpty(node)) return null;
  const place = pair.placeOf(node);
  const removed = place && place.end > place.start ? [{ at: place, text: '' }] : [];
  const lineAt = endOfLine(text, pair.keyAt.end);
  return [...removed, { at: span(lineAt, lineAt), text: lineEnd + item(entry, '  ', lineEnd) }];
}

function isEmpty(node: Node | null): boolean {
  return node === null || (isSeq(node) && node.items.length === 0) || (isScalar(node) && (node.value === null || node.value === ''));
}

function behindLast(pair: Pair, seq: YAMLSeq, inline: string): Edit {
  const { end } = pair.placeOf(asNode(seq.items.at(-1))) ?? pair.keyAt;
  return { at: span(end, end), text: `, { ${inline} }` };
}

function newItem(text: string, pair: Pair, seq: YAMLSeq, end: number, entry: SignatureEntry, lineEnd: string): Edit {
  const first = pair.placeOf(seq)!;
  return { at: span(end, end), text: lineEnd + item(entry, ' '.repeat(column(text, first.start)), lineEnd) };
}

/** How many characters stand before an offset on its line. */
function column(text: string, offset: number): number {
  return offset - (Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1);
}

function endOfLine(text: string, offset: number): number {
  return offset + text.slice(offset).search(/[\r\n]|$/);
}
