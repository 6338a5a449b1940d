// Going to where a name is defined, finding all its uses, and marking those in view.
import * as vscode from 'vscode';
import { definition } from '../../assist/definition.ts';
import { highlights, references } from '../../assist/references.ts';
import { PAGES, type Pages } from '../pages.ts';

export function definitions(pages: Pages): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.languages.registerDefinitionProvider(PAGES, {
      async provideDefinition(document, position) {
        const page = await pages.of(document);
        const found = page && definition(page.open, page.spot(position));
        return found ? page.locate(found.to) : null;
      },
    }),
    vscode.languages.registerReferenceProvider(PAGES, {
      async provideReferences(document, position, { includeDeclaration }) {
        const page = await pages.of(document);
        if (!page) return null;
        return references(page.open, page.spot(position), includeDeclaration).flatMap((place) => page.locate(place) ?? []);
      },
    }),
    vscode.languages.registerDocumentHighlightProvider(PAGES, {
      async provideDocumentHighlights(document, position) {
        const page = await pages.of(document);
        if (!page) return null;
        return highlights(page.open, page.spot(position), page.texts).flatMap((place) => {
          const range = page.range(place);
          const kind = place.role === 'definition' ? vscode.DocumentHighlightKind.Write : vscode.DocumentHighlightKind.Read;
          return range ? [new vscode.DocumentHighlight(range, kind)] : [];
        });
      },
    }),
  );
}
