// Renaming in the whole sheet at once: blocks, captions, heads of columns, and values in prose.
import * as vscode from 'vscode';
import { rename, renameTarget } from '../../assist/rename.ts';
import { PAGES, type Pages, workspaceEdit } from '../pages.ts';

export function renames(pages: Pages): vscode.Disposable {
  return vscode.languages.registerRenameProvider(PAGES, {
    async prepareRename(document, position) {
      const page = await pages.of(document);
      if (!page) return null;
      const spot = page.spot(position);
      const target = renameTarget(page.open, spot);
      if ('refused' in target) throw new Error(target.refused);
      const range = page.range({ text: spot.text, at: target.at });
      return range && { range, placeholder: target.name };
    },
    async provideRenameEdits(document, position, name) {
      const page = await pages.of(document);
      if (!page) return null;
      const edits = rename(page.open, page.spot(position), name);
      if ('refused' in edits) throw new Error(edits.refused);
      const edit = workspaceEdit(page, edits);
      if (edit === null) throw new Error('The name is used in another file, which is not changed from here');
      return edit;
    },
  });
}
