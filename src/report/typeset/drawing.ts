// A drawing of the view as a picture that stands alone: SVG with the looks of its shapes written into it, and a text for those who don't see it.
import { type ElementNode, escapeText, languageOf, textOf, type ViewNode } from '../../view/node.ts';
import { PAPER } from '../../view/style/colours.ts';
import { SHAPES } from '../../view/style/drawing.ts';
import { type Code, call, named, quoted, showable } from './code.ts';
import { ITALICS, SANS } from './faces.ts';

/** How wide drawings are, by their class: millimetres, or as wide as their column; others have the size of a letter. */
const WIDTHS: Readonly<Record<string, string>> = { 'aw-plot': '125mm', 'aw-gauge': '100%', 'aw-digestcode': '25mm' };

/** Whether the drawing stands on lines of its own. */
export function standsAlone(svg: ElementNode): boolean {
  return widthOf(svg) !== null;
}

/** The picture; one that says nothing that the words beside it don't is marked as ornament. */
export function drawing(svg: ElementNode): Code {
  const words = wordsOf(svg);
  const size = widthOf(svg);
  const picture = call(
    'image',
    call('bytes', quoted(svgText(svg))),
    'format: "svg"',
    size === null ? named('height', '0.95em') : named('width', size),
    named('alt', quoted(words || 'ornament')),
  );
  const box = size === null ? call('box', 'baseline: 12%', picture) : picture;
  return words === '' ? call('pdf.artifact', box) : box;
}

function widthOf(svg: ElementNode): string | null {
  return classesOf(svg).map((name) => WIDTHS[name]).find((width) => width !== undefined) ?? null; // biome-ignore format: one step
}

function classesOf(node: ElementNode): readonly string[] {
  return (node.attributes.class ?? '').split(' ');
}

function wordsOf(svg: ElementNode): string {
  const told = svg.children.filter((child) => typeof child === 'object' && (child.tag === 'title' || child.tag === 'desc'));
  return svg.attributes['aria-label'] ?? told.map(textOf).join('. ');
}

/** SVG of its own. */
function svgText(svg: ElementNode): string {
  const { viewBox = '0 0 1 1', width = '1', height = '1' } = svg.attributes;
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}" width="${width}" height="${height}" xml:space="preserve" font-family="${SANS}">`;
  const colour = currentColour(svg);
  return `${head}${svg.children.map((child) => write(child, colour)).join('')}</svg>`;
}

const OWN = [
  'x',
  'y',
  'x1',
  'x2',
  'y1',
  'y2',
  'cx',
  'cy',
  'r',
  'dx',
  'dy',
  'd',
  'points',
  'width',
  'height',
  'transform',
  'text-anchor',
] as const;

function write(node: ViewNode, colour: string): string {
  if (typeof node === 'string') return escapeText(showable(node));
  if (languageOf(node.tag) !== 'svg' || node.tag === 'title' || node.tag === 'desc') return '';
  const look = Object.assign({}, ...classesOf(node).map((name) => SHAPES[name])) as Record<string, string>;
  const own = Object.fromEntries(OWN.flatMap((name) => (node.attributes[name] === undefined ? [] : [[name, node.attributes[name]]])));
  const attributes = Object.entries({ ...look, ...own }).map(([name, value]) => ` ${name}="${quotes(resolved(value, colour))}"`);
  return `<${node.tag}${attributes.join('')}>${node.children.map((child) => write(child, colour)).join('')}</${node.tag}>`;
}

function quotes(value: string): string {
  return escapeText(value).replaceAll('"', '&quot;');
}

/** A look's value with the colours and faces of paper. */
function resolved(value: string, colour: string): string {
  if (value === 'currentColor') return colour;
  return value.replace(
    /var\(--aw-([\w-]+)(?:,\s*([^)]*))?\)/g,
    (_, name: string, otherwise?: string) => VARIABLES[name] ?? otherwise ?? 'none',
  );
}

const VARIABLES: Readonly<Record<string, string>> = { ...PAPER, sans: SANS, maths: ITALICS };

const COLOURS: Readonly<Record<string, string>> = {
  'aw-holds': PAPER.holds,
  'aw-fails': PAPER.fails,
  'aw-error': PAPER.fails,
  'aw-undecided': PAPER.undecided,
  'aw-warning': PAPER.undecided,
};

function currentColour(svg: ElementNode): string {
  return classesOf(svg).map((name) => COLOURS[name]).find((colour) => colour !== undefined) ?? PAPER.quiet; // biome-ignore format: one step
}
