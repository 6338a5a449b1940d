// Symbolic links on the way to a file that a sheet reads: none may lead out of the workspace.
import * as vscode from 'vscode';

/** Whether links lead out of a folder, by paths on the disk. */
type LeadsOut = (root: string, path: string) => Promise<boolean>;

let leadsOut: LeadsOut | null = null;

/** Says how links are looked through: where there is a disk, where they lead; elsewhere only that there is one can be seen. */
export function lookThroughLinks(onDisk: LeadsOut | null): void {
  leadsOut = onDisk;
}

/** Why a file may not be read because of links on the way to it; null where it may. */
export async function linkRefusal(root: vscode.Uri, file: vscode.Uri): Promise<string | null> {
  if (leadsOut && file.scheme === 'file') {
    return (await leadsOut(root.fsPath, file.fsPath)) ? 'it is a link that leads out of the workspace' : null;
  }
  const parts = file.path.slice(root.path.length).split('/').filter(Boolean);
  for (let i = 1; i <= parts.length; i++) {
    const { type } = await vscode.workspace.fs.stat(vscode.Uri.joinPath(root, ...parts.slice(0, i)));
    if (type & vscode.FileType.SymbolicLink) return "it is a symbolic link, and where that leads can't be seen here";
  }
  return null;
}
