// Loads further files of the extension in a browser's worker, where the editor itself loads one file and no more.
import * as vscode from 'vscode';

type Exports = Readonly<Record<string, unknown>>;

/**
 * Loads parts from a folder: `load(files)` takes the files of a part, each behind those that it requires, and gives what the last one
 * exports. A file is fetched and run once. Code is run as the editor runs ours: as the body of a function, in CommonJS.
 */
export function loadParts(folder: vscode.Uri): <Part>(files: readonly string[]) => Promise<Part> {
  const modules = new Map<string, Exports>([['vscode', vscode]]);
  const fetched = new Map<string, Promise<string>>();
  const require = (path: string): Exports => {
    const found = modules.get(path);
    if (!found) throw new Error(`${path} is required before it was loaded`);
    return found;
  };
  const read = (path: string): Promise<string> => {
    const text = fetched.get(path) ?? readText(vscode.Uri.joinPath(folder, path)).finally(() => fetched.delete(path));
    fetched.set(path, text);
    return text;
  };
  const load = async <Part>(files: readonly string[]): Promise<Part> => {
    const texts = await Promise.all(files.map((path) => (modules.has(path) ? '' : read(path))));
    for (const [i, path] of files.entries()) {
      if (!modules.has(path)) modules.set(path, path.endsWith('.js') ? run(path, texts[i]!) : { __esModule: true, default: texts[i] });
    }
    return require(files.at(-1)!) as Part;
  };
  const run = (path: string, code: string): Exports => {
    const module = { exports: {} };
    const named = `'use strict';${code}\n//# sourceURL=${vscode.Uri.joinPath(folder, path).toString(true)}`;
    new Function('module', 'exports', 'require', 'loadPart', named)(module, module.exports, require, load);
    return module.exports;
  };
  return load;
}

async function readText(uri: vscode.Uri): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
}
