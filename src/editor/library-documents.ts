// The sheets of the library as documents that can be read and not changed: where the definition of a function leads.
import * as vscode from 'vscode';
import { SHEET_ENDING } from './sheet-documents.ts';

const SCHEME = 'ampwright-library';

/** The document of a sheet of the library. It is text, so its name is not that of a sheet. */
export function libraryDocument(name: string): vscode.Uri {
  return vscode.Uri.from({ scheme: SCHEME, path: `/${name}.md` });
}

/** Gives the documents their text: the files that come with the extension. */
export function libraryDocuments(extension: vscode.Uri): vscode.Disposable {
  return vscode.workspace.registerTextDocumentContentProvider(SCHEME, {
    async provideTextDocumentContent({ path }) {
      const name = /^\/([\w-]+)\.md$/.exec(path)?.[1];
      if (name === undefined) throw new Error(`The library has no sheet ${path}.`);
      const file = vscode.Uri.joinPath(extension, 'dist', 'library', name + SHEET_ENDING);
      return new TextDecoder().decode(await vscode.workspace.fs.readFile(file));
    },
  });
}
