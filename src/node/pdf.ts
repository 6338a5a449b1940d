// A sheet as PDF/A-2a (ISO 19005-2, level A: tagged, every formula and picture with a text), typeset by Typst as a native module.
import nodeModule from 'node:module';
import type { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { ReportInput } from '../report/input.ts';
import { codePoint } from '../report/typeset/code.ts';
import { type Paper, typesetSource } from '../report/typeset/document.ts';
import { familiesFor } from '../report/typeset/faces.ts';
import { fontFiles } from './pdf-fonts.ts';

export type PdfOutcome =
  /** `unshown`: characters that no face has; they stand as their code points. */
  | { readonly kind: 'made'; readonly bytes: Uint8Array; readonly unshown: readonly string[] }
  /** Nothing was made; `because` is a sentence without a final full stop that says what is missing, for a person. */
  | { readonly kind: 'refused'; readonly because: string };

const COMPILER = '@myriaddreamin/typst-ts-node-compiler';
/** Finds packages from where this file, or the bundle that it is in, lies. */
const packages = nodeModule.createRequire(import.meta.url);

/**
 * The PDF of an evaluated sheet, for command line and editor alike: `pdfOf({ ...evaluation, version, history }, 'a4')`.
 * The same input gives the same bytes. Reads only the files of the font packages; asks no clock and no network.
 * Takes the processor for as long as it lasts, about 10 ms a page.
 */
export async function pdfOf(input: ReportInput, paper: Paper): Promise<PdfOutcome> {
  const compilers = compilerModule();
  if (typeof compilers === 'string') return { kind: 'refused', because: compilers };
  const source = typesetSource(input, paper);
  const fonts = fontFiles(familiesFor(source), (name) => packages.resolve(name));
  if (typeof fonts === 'string') return { kind: 'refused', because: fonts };
  // A workspace that does not exist: the source reads no file, and could not.
  const compiler = compilers.NodeCompiler.create({ workspace: '/nonexistent', fontArgs: [{ fontBlobs: [...fonts] }] });
  try {
    return typeset(compiler, source);
  } finally {
    compiler.evictCache(0);
  }
}

function compilerModule(): { NodeCompiler: typeof NodeCompiler } | string {
  try {
    return packages(COMPILER);
  } catch (error) {
    const missing = (error as NodeJS.ErrnoException).code === 'MODULE_NOT_FOUND' && !/native binding/i.test(String(error));
    return missing
      ? `the package ${COMPILER} is missing, which typesets it; \`npm install ${COMPILER}\` adds it`
      : `the package ${COMPILER} has no part for this system (${process.platform}, ${process.arch})`;
  }
}

/** Characters that no face has are found by the typesetter: PDF/A forbids empty boxes. */
function typeset(compiler: NodeCompiler, source: string): PdfOutcome {
  const unshown = new Set<string>();
  for (let text = source; ; text = withoutCharacters(source, unshown)) {
    const { result, ...rest } = compiled(compiler, text);
    if (result === null) return { kind: 'refused', because: `it could not be typeset: ${rest.because}` };
    try {
      return { kind: 'made', bytes: compiler.pdf(result, { pdfStandard: 'a-2a' }), unshown: [...unshown] };
    } catch (error) {
      const found = charactersOf(String(error)).filter((character) => !unshown.has(character));
      if (found.length === 0) return { kind: 'refused', because: `it could not be typeset: ${messageOf(String(error))}` };
      for (const character of found) unshown.add(character);
    }
  }
}

function compiled(compiler: NodeCompiler, source: string) {
  const outcome = compiler.compile({ mainFileContent: source });
  const because = outcome.result === null ? outcome.takeDiagnostics()?.shortDiagnostics.map((d: { message: string }) => d.message) : [];
  return { result: outcome.result, because: because?.join('; ') ?? '' };
}

/** Characters of the texts that the typesetter says it cannot display. */
function charactersOf(error: string): string[] {
  const texts = [...error.matchAll(/the text `\\"(.*?)\\"` could not be displayed/g)].map(([, text]) => unescaped(text!));
  return texts.flatMap((text) => [...text]).filter((character) => character > '\u007f');
}

/** The text of a string that was written for debugging twice over. */
function unescaped(text: string): string {
  return text.replace(/(?<!\\)\\+u\{([0-9a-f]+)\}/g, (_, digits: string) => String.fromCodePoint(Number.parseInt(digits, 16)));
}

function messageOf(error: string): string {
  return /message: "(.*?)", trace/.exec(error)?.[1] ?? error;
}

/** All that is not ASCII in the source stands in string literals, so a character there can be replaced by text. */
function withoutCharacters(source: string, characters: ReadonlySet<string>): string {
  return source.replace(/[^\u0000-\u007f]/gu, (character) => (characters.has(character) ? `\\${codePoint(character)}` : character));
}
