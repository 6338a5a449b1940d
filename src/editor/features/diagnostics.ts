// The problems of the open sheets, on the exact characters.
import * as vscode from 'vscode';
import { block } from '../../assist/location.ts';
import type { Problem, Severity } from '../../text/problem.ts';
import { notebookSheet, type ShownSheet } from '../page.ts';
import { placedProblems } from '../placed-problems.ts';
import type { Sessions } from '../sessions.ts';
import type { TextSessions } from '../text-sessions.ts';

const severities: Readonly<Record<Severity, vscode.DiagnosticSeverity>> = {
  error: vscode.DiagnosticSeverity.Error,
  warning: vscode.DiagnosticSeverity.Warning,
  note: vscode.DiagnosticSeverity.Information,
};

/** Shows the problems of the sheets that are open, as notebooks and as text, and takes them back when a sheet is closed. */
export function diagnostics(sessions: Sessions, texts: TextSessions): vscode.Disposable {
  const collection = vscode.languages.createDiagnosticCollection('ampwright');
  const reported = new Map<object, readonly vscode.Uri[]>();
  const report = (owner: object, problems: readonly Shown[]) => {
    const byDocument = new Map<string, [vscode.Uri, vscode.Diagnostic[]]>();
    for (const uri of reported.get(owner) ?? []) byDocument.set(uri.toString(), [uri, []]);
    for (const shown of problems) {
      const { uri } = shown.location;
      const [, others] = byDocument.get(uri.toString()) ?? [uri, []];
      byDocument.set(uri.toString(), [uri, [...others, diagnostic(shown)]]);
    }
    collection.set([...byDocument.values()]);
    reported.set(
      owner,
      [...byDocument.values()].flatMap(([uri, found]) => (found.length > 0 ? [uri] : [])),
    );
  };
  const forget = (owner: object) => {
    report(owner, []);
    reported.delete(owner);
  };
  return vscode.Disposable.from(
    collection,
    sessions.onDidAnswer(({ notebook, answer }) => answer && report(notebook, shownProblems(notebookSheet(notebook, answer)))),
    sessions.onDidClose(({ notebook }) => forget(notebook)),
    texts.onDidRead((page) => report(page.document, shownProblems(page))),
    texts.onDidClose(forget),
  );
}

/** A problem with its place in the editor, and the other places that belong to it. */
interface Shown {
  readonly problem: Problem;
  readonly location: vscode.Location;
  readonly places: readonly vscode.DiagnosticRelatedInformation[];
}

function shownProblems(sheet: ShownSheet): readonly Shown[] {
  return placedProblems(sheet).flatMap(({ problem, text }) => {
    const location = sheet.locate({ text, at: problem.at });
    const places = problem.places.flatMap(({ cell, at, label }) => {
      const place = sheet.locate({ text: cell === undefined ? text : block(cell), at });
      return place ? [new vscode.DiagnosticRelatedInformation(place, label)] : [];
    });
    return location ? [{ problem, location, places }] : [];
  });
}

function diagnostic({ problem, location, places }: Shown): vscode.Diagnostic {
  const made = new vscode.Diagnostic(location.range, problem.message, severities[problem.severity]);
  made.source = 'Ampwright';
  made.code = problem.code;
  made.relatedInformation = [...places];
  return made;
}
