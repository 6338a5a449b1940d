// The font files of the PDF: packages of plain font files, read when a document needs them.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Family } from '../report/typeset/faces.ts';

interface FontPackage {
  readonly name: string;
  /** What it is needed for, in the plural. */
  readonly writes: string;
  readonly files: readonly string[];
}

const PACKAGES: Readonly<Record<Family, FontPackage>> = {
  'Noto Sans': {
    name: '@embedpdf/fonts-latin',
    writes: 'all documents',
    files: ['NotoSans-Regular.ttf', 'NotoSans-Bold.ttf', 'NotoSans-Italic.ttf', 'NotoSans-BoldItalic.ttf'],
  },
  'Noto Naskh Arabic': {
    name: '@embedpdf/fonts-arabic',
    writes: 'Arabic texts',
    files: ['NotoNaskhArabic-Regular.ttf', 'NotoNaskhArabic-Bold.ttf'],
  },
  'Noto Sans Hebrew': {
    name: '@embedpdf/fonts-hebrew',
    writes: 'Hebrew texts',
    files: ['NotoSansHebrew-Regular.ttf', 'NotoSansHebrew-Bold.ttf'],
  },
  'Noto Sans S Chinese': {
    name: '@embedpdf/fonts-sc',
    writes: 'Chinese and Japanese texts',
    files: ['NotoSansHans-Regular.otf', 'NotoSansHans-Bold.otf'],
  },
  'Noto Sans Korean': {
    name: '@embedpdf/fonts-kr',
    writes: 'Korean texts',
    files: ['NotoSansKR-Regular.otf', 'NotoSansKR-Bold.otf'],
  },
};

/** Resolves the name of a package to one of its files; throws where the package is missing. */
export type Resolve = (name: string) => string;

/** The bytes of the files of the families; a sentence that says which package is missing. */
export function fontFiles(families: readonly Family[], resolve: Resolve): readonly Buffer[] | string {
  const files: Buffer[] = [];
  for (const family of families) {
    const { name, writes, files: names } = PACKAGES[family];
    try {
      // The entry of each of these packages lies in its folder `dist`, beside `fonts`.
      const folder = join(dirname(resolve(name)), '..', 'fonts');
      files.push(...names.map((file) => readFileSync(join(folder, file))));
    } catch {
      return `the package ${name} is missing (its typeface is needed for ${writes}); \`npm install ${name}\` adds it`;
    }
  }
  return files;
}
