// Evaluates sheets for the Testing view, some at a time, and waits for the window between them so that the editor stays quick.
import * as vscode from 'vscode';
import { requirementVerdict } from '../../assist/requirement-verdict.ts';
import { daysOf } from '../../text/date.ts';
import type { Sessions } from '../sessions.ts';
import { answerOf, openedAnswer, placeOf, placeRequirements, type Requirements, type SheetAnswer } from './requirement-items.ts';
import type { SheetItems } from './sheet-items.ts';

export interface Testing {
  readonly controller: vscode.TestController;
  readonly sheets: SheetItems;
  readonly sessions: Sessions;
}

/** Carries out a request of the Testing view: everything, some sheets, or some of their requirements. */
export async function runSheets(testing: Testing, request: vscode.TestRunRequest, token: vscode.CancellationToken): Promise<void> {
  const { controller, sheets } = testing;
  if (!request.include && controller.items.size === 0) await sheets.find(token);
  const wanted = wantedSheets(request, controller);
  const opening = { left: MOST_OPENED };
  const run = controller.createTestRun(request);
  const announced = wanted.size <= MOST_ANNOUNCED;
  if (announced) for (const sheet of wanted.keys()) run.enqueued(sheet);
  const runOne = ([sheet, only]: readonly [vscode.TestItem, ReadonlySet<string> | null]) => {
    if (announced) run.started(sheet);
    return runSheet(testing, run, opening, sheet, (item) => (only === null || only.has(item.id)) && !request.exclude?.includes(item));
  };
  const sheetsLeft = [...wanted];
  while (sheetsLeft.length > 0 && !token.isCancellationRequested) {
    await Promise.all(sheetsLeft.splice(0, TOGETHER).map(runOne));
    await windowKeepsUp();
  }
  run.end();
}

/** The sheets to evaluate, each with the ids of its requirements that are asked for; null: all. */
function wantedSheets(
  request: vscode.TestRunRequest,
  { items }: vscode.TestController,
): ReadonlyMap<vscode.TestItem, ReadonlySet<string> | null> {
  const wanted = new Map<vscode.TestItem, Set<string> | null>();
  for (const item of request.include ?? [...items].map(([, sheet]) => sheet)) {
    if (request.exclude?.includes(item)) continue;
    if (!item.parent) wanted.set(item, null);
    else if (wanted.get(item.parent) !== null) wanted.set(item.parent, (wanted.get(item.parent) ?? new Set()).add(item.id));
  }
  return wanted;
}

async function runSheet(
  { controller, sessions }: Testing,
  run: vscode.TestRun,
  opening: { left: number },
  sheet: vscode.TestItem,
  wanted: (item: vscode.TestItem) => boolean,
): Promise<void> {
  const found = await answerOf(sheet, sessions);
  if ('refused' in found) return run.errored(sheet, new vscode.TestMessage(`It can't be read: ${found.refused}.`));
  const opened = found.laid === null && failsSomewhere(found) && opening.left-- > 0 ? await openedAnswer(found, sessions) : null;
  const answer = opened ?? found;
  const requirements = placeRequirements(controller, sheet, answer);
  const items = [...sheet.children].map(([, item]) => item).filter(wanted);
  for (const item of items) report(run, item, requirements, answer);
  const errors = answer.result.cells.flatMap(({ problems }) => problems).filter(({ severity }) => severity === 'error');
  if (errors.length > 0)
    run.errored(
      sheet,
      errors.slice(0, MOST_ERRORS).map(({ message }) => new vscode.TestMessage(message)),
    );
  else if (requirements.size === 0) run.skipped(sheet);
}

const MOST_ERRORS = 20;
/** Sheets with a failure that one run opens to find its cell; of further ones the file is shown. */
const MOST_OPENED = 20;

function failsSomewhere({ result }: SheetAnswer): boolean {
  return result.cells.some(({ statements }) => statements.some((of) => of.kind === 'requirement' && of.status !== 'holds'));
}

function report(run: vscode.TestRun, item: vscode.TestItem, requirements: Requirements, answer: SheetAnswer): void {
  const result = requirements.get(item.id);
  if (!result) return;
  const { state, message, sides } = requirementVerdict(result, today());
  item.description = message;
  if (state === 'passes') run.passed(item);
  else if (state === 'fails') run.failed(item, messageOf(message, sides, placeOf(result, answer)));
  else if (state === 'not calculated') run.errored(item, messageOf(message, null, placeOf(result, answer)));
  else {
    // Neither passed nor failed: the mark is neutral, and the words tell.
    run.appendOutput(`${item.label}\r\n  ${message}\r\n`, undefined, item);
    run.skipped(item);
  }
}

function messageOf(
  words: string,
  sides: { readonly wanted: string; readonly found: string } | null,
  place: vscode.Location,
): vscode.TestMessage {
  const message = sides ? vscode.TestMessage.diff(words, sides.wanted, sides.found) : new vscode.TestMessage(words);
  message.location = place;
  return message;
}

/** Days since 1970-01-01 where the user sits. */
function today(): number {
  const now = new Date();
  return daysOf(now.getFullYear(), now.getMonth() + 1, now.getDate())!;
}

/** Sheets that are announced before their turn: each word to the window takes it the longer the more of them are listed there. */
const MOST_ANNOUNCED = 100;
/** Sheets whose files are asked for together: each goes by way of the window, which takes its time to answer. */
const TOGETHER = 20;

/** Waits until the window has shown what was reported: its answer to anything comes behind that. Else it would fall behind, and with it all typing. */
async function windowKeepsUp(): Promise<void> {
  await vscode.commands.executeCommand('setContext', 'ampwright.evaluating', true);
}
