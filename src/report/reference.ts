// The reference as a set of HTML pages: an index, one page a library sheet, the notation, the mathematics. Made from what it describes.
import { LIBRARY_SHEETS } from '../library/index.ts';
import { framed } from './reference/frame.ts';
import { indexPage } from './reference/index-page.ts';
import { evaluatedLibrarySheet, libraryPage, placesOnPage } from './reference/library-page.ts';
import { MATHEMATICS_PLACES, mathematicsPage } from './reference/mathematics-page.ts';
import { notationPage } from './reference/notation-page.ts';
import { placesOf } from './reference/places.ts';

/** All pages; they link to each other by file name and stand in one folder. The same version gives the same bytes. */
export function referencePages(version: string): readonly { readonly file: string; readonly html: string }[] {
  const sheets = LIBRARY_SHEETS.map(evaluatedLibrarySheet);
  const mathematics = mathematicsPage();
  const places = placesOf(new Map([...sheets.map((s) => [s.file, placesOnPage(s)] as const), [mathematics.file, MATHEMATICS_PLACES]]));
  const pages = [indexPage(sheets), ...sheets.map((sheet) => libraryPage(sheet, places)), notationPage(places), mathematics];
  return pages.map((page) => ({ file: page.file, html: framed(page, pages, version) }));
}
