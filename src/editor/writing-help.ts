// Help in writing, as a list. It is loaded when the first sheet is on the screen, and not waited for.
import * as vscode from 'vscode';
import { readAhead } from '../run/library.ts';
import { completion } from './features/completion.ts';
import { definitions } from './features/definition.ts';
import { formatting } from './features/formatting.ts';
import { hovers } from './features/hover.ts';
import { lineEndValues } from './features/inlay-values.ts';
import { outline } from './features/outline.ts';
import { quickFixes } from './features/quick-fixes.ts';
import { renames } from './features/rename.ts';
import { colours } from './features/semantic-tokens.ts';
import { signatures } from './features/signature-help.ts';
import type { Pages } from './pages.ts';
import type { Sessions } from './sessions.ts';

export function writingHelp(pages: Pages, sessions: Sessions): vscode.Disposable {
  return vscode.Disposable.from(
    colours(pages),
    lineEndValues(pages, sessions),
    outline(pages),
    completion(pages),
    signatures(pages),
    hovers(pages),
    definitions(pages),
    renames(pages),
    formatting(pages),
    quickFixes(pages),
    libraryAhead(),
  );
}

/** Reads the library a sheet at a time, so that the first list of names does not wait for all of it. */
function libraryAhead(): vscode.Disposable {
  const between = 100;
  let timer = setTimeout(function next() {
    if (readAhead()) timer = setTimeout(next, between);
  }, between);
  return { dispose: () => clearTimeout(timer) };
}
