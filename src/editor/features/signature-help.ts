// The form of the function whose call is being written, with the parameter at hand.
import * as vscode from 'vscode';
import { signatureHelp } from '../../assist/signature-help.ts';
import { PAGES, type Pages } from '../pages.ts';

export function signatures(pages: Pages): vscode.Disposable {
  const provider: vscode.SignatureHelpProvider = {
    async provideSignatureHelp(document, position) {
      const page = await pages.of(document);
      const found = page && signatureHelp(page.open, page.spot(position));
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
  return vscode.languages.registerSignatureHelpProvider(PAGES, provider, '(', ',');
}
