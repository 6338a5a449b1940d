// Goes to the requirement that most needs a look, of the sheet in front or of one of its blocks.
import * as vscode from 'vscode';
import { worstRequirement } from '../../assist/worst-requirement.ts';
import { locationInBlock } from '../places.ts';
import { reveal } from '../reveal.ts';
import { type Register, sheetFor } from './context.ts';

export const goToWorst: Register = (context) =>
  vscode.commands.registerCommand('ampwright.goToWorst', async (block?: unknown) => {
    const session = await sheetFor(context, null);
    if (!session) return;
    await session.update();
    const { answer } = session;
    const worst = answer && worstRequirement(answer.result, typeof block === 'number' ? block : null);
    if (!worst) return void vscode.window.showInformationMessage('This sheet has no requirement yet; one begins with shall or should.');
    const location = locationInBlock(answer.laid, worst.cell, answer.result.cells[worst.cell]!.code, worst.statement.at);
    if (location) await reveal(location);
  });
