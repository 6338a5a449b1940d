// The requirements of a sheet as items below it, each at its line: in the cell of an open sheet, else in the file.
import * as vscode from 'vscode';
import type { RequirementResult, SheetResult } from '../../run/result.ts';
import { calcCells, type Sheet } from '../../sheet/sheet.ts';
import { positionAt } from '../../text/lines.ts';
import { evaluateClosed } from '../closed-sheet.ts';
import type { Laid } from '../laid.ts';
import { locationInBlock } from '../places.ts';
import type { Answer } from '../session.ts';
import type { Sessions } from '../sessions.ts';

/** A sheet's answer as far as the Testing view needs it. `laid` null: the sheet is not open. */
export interface SheetAnswer {
  readonly uri: vscode.Uri;
  readonly sheet: Sheet;
  readonly result: SheetResult;
  readonly laid: Laid | null;
}

/** The sheet of an item evaluated as it is now, or why it can't be. */
export async function answerOf(item: vscode.TestItem, sessions: Sessions): Promise<SheetAnswer | { readonly refused: string }> {
  const uri = item.uri!;
  const session = [...sessions.all()].find(({ notebook }) => notebook.uri.toString() === item.id);
  if (session) {
    await session.update();
    if (session.answer) return openAnswer(uri, session.answer);
  }
  const closed = await evaluateClosed(uri);
  return 'refused' in closed ? closed : { uri, sheet: closed.evaluation.sheet, result: closed.evaluation.result, laid: null };
}

/** The same of a sheet that is opened for it, without being shown: only then are its cells known, and with them the places to jump to. */
export async function openedAnswer({ uri }: SheetAnswer, sessions: Sessions): Promise<SheetAnswer | null> {
  const session = sessions.of(await vscode.workspace.openNotebookDocument(uri));
  await session?.update();
  return session?.answer ? openAnswer(uri, session.answer) : null;
}

const openAnswer = (uri: vscode.Uri, { laid, result }: Answer): SheetAnswer => ({ uri, sheet: laid.sheet, result, laid });

/** One item a requirement, below its sheet's; their results by id. */
export type Requirements = ReadonlyMap<string, RequirementResult>;

/** Evaluates a sheet and puts its requirements below its item. */
export async function requirementItems(controller: vscode.TestController, item: vscode.TestItem, sessions: Sessions): Promise<void> {
  if (item.parent) return;
  item.busy = true;
  try {
    const answer = await answerOf(item, sessions);
    item.error = 'refused' in answer ? answer.refused : undefined;
    if (!('refused' in answer)) placeRequirements(controller, item, answer);
  } finally {
    item.busy = false;
  }
}

/** Brings the items of an open sheet up to its answer; results of before no longer count where something changed. */
export function changedRequirements(controller: vscode.TestController, item: vscode.TestItem, answer: Answer): void {
  const before = shownAs(item.children);
  const decided = decisions.get(item);
  const requirements = placeRequirements(controller, item, openAnswer(item.uri!, answer));
  if (before !== shownAs(item.children) || decided !== decisionsOf(requirements)) controller.invalidateTestResults(item);
}

const decisions = new WeakMap<vscode.TestItem, string>();

/** Puts the requirements of an answer below the sheet's item; those that are there as they are stay. */
export function placeRequirements(controller: vscode.TestController, item: vscode.TestItem, answer: SheetAnswer): Requirements {
  const results = new Map<string, RequirementResult>();
  const items = answer.result.cells.flatMap(({ statements }) =>
    statements.flatMap((result) => {
      if (result.kind !== 'requirement') return [];
      const label = `${result.force} ${result.condition}`;
      const id = freeId(label, results);
      results.set(id, result);
      const { uri, range } = placeOf(result, answer);
      const there = item.children.get(id);
      const made = there?.uri?.toString() === uri.toString() ? there : controller.createTestItem(id, label, uri);
      made.range = range;
      made.sortText = String(results.size).padStart(6, '0');
      made.description = result.statement.clauses.because?.value;
      return [made];
    }),
  );
  if (shownAs(items) !== shownAs(item.children)) item.children.replace(items);
  decisions.set(item, decisionsOf(results));
  return results;
}

/** Where a requirement stands. */
export function placeOf({ cell, statement }: RequirementResult, { uri, sheet, result, laid }: SheetAnswer): vscode.Location {
  const { code } = result.cells[cell]!;
  const shown = laid && locationInBlock(laid, cell, code, statement.at);
  if (shown) return shown;
  const start = calcCells(sheet)[cell]?.code.start ?? 0;
  const position = (offset: number) => {
    const { line, column } = positionAt(sheet.lines, start + offset);
    return new vscode.Position(line, column);
  };
  return new vscode.Location(uri, new vscode.Range(position(statement.at.start), position(statement.at.end)));
}

/** The same requirement twice in a sheet is two items. */
function freeId(label: string, taken: Requirements): string {
  let id = label;
  for (let number = 2; taken.has(id); number++) id = `${label} (${number})`;
  return id;
}

function shownAs(items: Iterable<vscode.TestItem | readonly [string, vscode.TestItem]>): string {
  const lines = [...items].map((one) => ('length' in one ? one[1] : one)).map(({ id, uri }) => `${id}\0${uri}`);
  return lines.sort().join('\n');
}

function decisionsOf(requirements: Requirements): string {
  return [...requirements].map(([id, { status, sides }]) => `${id}\0${status}\0${sides?.left.short}\0${sides?.right.short}`).join('\n');
}
