// Going to where a name is defined, and finding all its uses.
import * as vscode from 'vscode';
import { definition } from '../../assist/definition.ts';
import { references } from '../../assist/references.ts';
import type { Sessions } from '../sessions.ts';
import { blockOf, CELLS, shownAt, spotOf } from '../spots.ts';

export function definitions(sessions: Sessions): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.languages.registerDefinitionProvider(CELLS, {
      async provideDefinition(document, position) {
        const block = await blockOf(sessions, document);
        const found = block && definition(block.answer.open, spotOf(block, position));
        return found ? shownAt(block, found.to) : null;
      },
    }),
    vscode.languages.registerReferenceProvider(CELLS, {
      async provideReferences(document, position, { includeDeclaration }) {
        const block = await blockOf(sessions, document);
        if (!block) return null;
        return references(block.answer.open, spotOf(block, position), includeDeclaration).flatMap((place) => shownAt(block, place) ?? []);
      },
    }),
  );
}
