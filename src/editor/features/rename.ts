// Renaming in all cells of the sheet at once, values in prose included.
import * as vscode from 'vscode';
import { rename, renameTarget } from '../../assist/rename.ts';
import type { Sessions } from '../sessions.ts';
import { blockOf, CELLS, rangeOf, spotOf, workspaceEdit } from '../spots.ts';

export function renames(sessions: Sessions): vscode.Disposable {
  return vscode.languages.registerRenameProvider(CELLS, {
    async prepareRename(document, position) {
      const block = await blockOf(sessions, document);
      if (!block) return null;
      const target = renameTarget(block.answer.open, spotOf(block, position));
      if ('refused' in target) throw new Error(target.refused);
      return { range: rangeOf(document, target.at), placeholder: target.name };
    },
    async provideRenameEdits(document, position, name) {
      const block = await blockOf(sessions, document);
      if (!block) return null;
      const edits = rename(block.answer.open, spotOf(block, position), name);
      if ('refused' in edits) throw new Error(edits.refused);
      const edit = workspaceEdit(block, edits);
      if (edit === null) throw new Error('The name is used in another file, which is not changed from here');
      return edit;
    },
  });
}
