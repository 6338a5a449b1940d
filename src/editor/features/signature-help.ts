// The form of the function whose call is being written, with the parameter at hand.
import * as vscode from 'vscode';
import { signatureHelp } from '../../assist/signature-help.ts';
import type { Sessions } from '../sessions.ts';
import { blockOf, CELLS, spotOf } from '../spots.ts';

export function signatures(sessions: Sessions): vscode.Disposable {
  const provider: vscode.SignatureHelpProvider = {
    async provideSignatureHelp(document, position) {
      const block = await blockOf(sessions, document);
      const found = block && signatureHelp(block.answer.open, spotOf(block, position));
      if (!found) return null;
      const signature = new vscode.SignatureInformation(found.label, found.documentation);
      signature.parameters = found.parameters.map(
        ({ at, documentation }) => new vscode.ParameterInformation([at.start, at.end], documentation),
      );
      const help = new vscode.SignatureHelp();
      help.signatures = [signature];
      help.activeParameter = found.active ?? found.parameters.length;
      return help;
    },
  };
  return vscode.languages.registerSignatureHelpProvider(CELLS, provider, '(', ',');
}
