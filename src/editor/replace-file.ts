// Replaces what a file holds, unless something else has changed it since it was read.
import * as vscode from 'vscode';
import type { Desktop } from './desktop.ts';

/** `unchanged`: it already held that. Else `because` is a sentence. */
export type Replaced = 'recorded' | 'unchanged' | { readonly because: string };

/** Writes `content` over `expected`, the bytes that it was made from: on a disk whole or not at all, elsewhere as its file system does. */
export async function replaceFile(uri: vscode.Uri, expected: Uint8Array, content: Uint8Array, desktop: Desktop | null): Promise<Replaced> {
  if (same(expected, content)) return 'unchanged';
  if (vscode.workspace.fs.isWritableFileSystem(uri.scheme) === false) return { because: 'Its file system is read-only.' };
  try {
    if (desktop && uri.scheme === 'file') {
      const outcome = await desktop.writeAtomically(uri.fsPath, content, expected);
      if (outcome.kind === 'refused') return { because: `It was not written: ${outcome.because}.` };
      return outcome.kind === 'unchanged' ? 'unchanged' : 'recorded';
    }
    if (!same(await vscode.workspace.fs.readFile(uri), expected)) return { because: 'Something else changed it since it was read.' };
    await vscode.workspace.fs.writeFile(uri, content);
    return 'recorded';
  } catch (error) {
    return { because: `It was not written: ${error instanceof Error ? error.message : String(error)}` };
  }
}

function same(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}
