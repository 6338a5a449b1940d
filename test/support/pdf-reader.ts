// Reads a PDF with a reader that shares nothing with the writer: text, tags, metadata, and pages as pictures.
import { createCanvas } from '@napi-rs/canvas';
import { getDocument, type PDFPageProxy, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly title: string;
  /** XMP metadata. */
  readonly metadata: string;
  /** Titles of the bookmarks, in their order. */
  readonly outline: readonly string[];
  /** Whether the file calls itself tagged. */
  readonly tagged: boolean;
  /** Names of what could run when it is opened, and of attached files. */
  readonly active: readonly string[];
}

export interface ReadPage {
  /** Points. */
  readonly size: readonly [width: number, height: number];
  readonly text: string;
  readonly tags: readonly Tag[];
  /** Where its links lead outside the document. */
  readonly links: readonly string[];
  readonly picture: (scale: number) => Promise<Picture>;
}

export interface Tag {
  readonly role: string;
  readonly alt: string | null;
}

export interface Picture {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const pdf = await getDocument({ data: Uint8Array.from(bytes), verbosity: VerbosityLevel.ERRORS }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= pdf.numPages; number++) pages.push(await readPage(await pdf.getPage(number)));
  const { info, metadata } = await pdf.getMetadata();
  const scripts = Object.keys((await pdf.getJSActions()) ?? {});
  const files = Object.keys((await pdf.getAttachments()) ?? {});
  const opening = (await pdf.getOpenAction()) === null ? [] : ['open action'];
  return {
    pages,
    title: String((info as Record<string, unknown>)['Title']),
    metadata: String((metadata as unknown as { getRaw(): string } | null)?.getRaw()),
    outline: titlesOf((await pdf.getOutline()) ?? []),
    tagged: (await pdf.getMarkInfo())?.Marked === true,
    active: [...scripts, ...files, ...opening],
  };
}

interface Entry {
  readonly title: string;
  readonly items: readonly Entry[];
}

function titlesOf(entries: readonly Entry[]): string[] {
  return entries.flatMap(({ title, items }) => [title, ...titlesOf(items)]);
}

async function readPage(page: PDFPageProxy): Promise<ReadPage> {
  const { width, height } = page.getViewport({ scale: 1 });
  const { items } = await page.getTextContent();
  const annotations = (await page.getAnnotations()) as { url?: string; unsafeUrl?: string }[];
  return {
    size: [width, height],
    text: items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? ' ' : ''}` : '')).join('').replace(/\s+/g, ' '), // biome-ignore format: one step
    tags: tagsOf((await page.getStructTree()) as Node | null),
    links: annotations.flatMap(({ url, unsafeUrl }) => url ?? unsafeUrl ?? []),
    picture: async (scale) => {
      const viewport = page.getViewport({ scale });
      const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
      const context = canvas.getContext('2d');
      await page.render({ canvas: canvas as never, canvasContext: context as never, viewport }).promise;
      const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
      return { data, width: canvas.width, height: canvas.height };
    },
  };
}

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

function tagsOf(node: Node | null): Tag[] {
  if (node?.role === undefined) return [];
  return [{ role: node.role, alt: node.alt ?? null }, ...(node.children ?? []).flatMap(tagsOf)];
}
