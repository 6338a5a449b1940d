// How each block stands, in the line below its cell: `2 hold · 1 fails`. A click goes to its worst requirement.
import * as vscode from 'vscode';
import { type BlockStatus, blockStatus } from '../../assist/block-status.ts';
import { worstRequirement } from '../../assist/worst-requirement.ts';
import type { Sessions } from '../sessions.ts';
import { notebookType } from '../sheet-documents.ts';

/** A mark for each level; the words say the same. */
export const MARKS: Readonly<Record<BlockStatus['level'], string>> = {
  error: '$(error)',
  fails: '$(close)',
  undecided: '$(question)',
  warning: '$(info)',
  holds: '$(check)',
};

const setting = 'ampwright.statusBelowBlocks';

export function cellStatus(sessions: Sessions): vscode.Disposable {
  const changed = new vscode.EventEmitter<void>();
  const provider: vscode.NotebookCellStatusBarItemProvider = {
    onDidChangeCellStatusBarItems: changed.event,
    provideCellStatusBarItems(cell) {
      if (!vscode.workspace.getConfiguration().get<boolean>(setting, true)) return [];
      const answer = sessions.of(cell.notebook)?.answer;
      const number = answer?.laid.blocks.indexOf(cell) ?? -1;
      const status = answer && number !== -1 ? blockStatus(answer.open, number) : null;
      if (!answer || !status) return [];
      const item = new vscode.NotebookCellStatusBarItem(
        `${MARKS[status.level]} ${status.text}`,
        vscode.NotebookCellStatusBarAlignment.Left,
      );
      item.accessibilityInformation = { label: status.text };
      if (worstRequirement(answer.result, number)) {
        item.tooltip = 'Go to the worst requirement of this block';
        item.command = { title: item.tooltip, command: 'ampwright.goToWorst', arguments: [number] };
      }
      return [item];
    },
  };
  return vscode.Disposable.from(
    changed,
    sessions.onDidAnswer(() => changed.fire()),
    vscode.workspace.onDidChangeConfiguration((event) => event.affectsConfiguration(setting) && changed.fire()),
    vscode.notebooks.registerNotebookCellStatusBarItemProvider(notebookType, provider),
  );
}
