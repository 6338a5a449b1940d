// The problems of the open sheets, on the exact characters of their cells.
import * as vscode from 'vscode';
import type { Problem, Severity } from '../../text/problem.ts';
import { locationInBlock, locationInFile } from '../places.ts';
import type { Answer, Session } from '../session.ts';
import type { Sessions } from '../sessions.ts';

const severities: Readonly<Record<Severity, vscode.DiagnosticSeverity>> = {
  error: vscode.DiagnosticSeverity.Error,
  warning: vscode.DiagnosticSeverity.Warning,
  note: vscode.DiagnosticSeverity.Information,
};

/** Shows the problems of each answer, and takes them back when the sheet is closed. */
export function diagnostics(sessions: Sessions): vscode.Disposable {
  const collection = vscode.languages.createDiagnosticCollection('ampwright');
  const reported = new Map<Session, readonly vscode.Uri[]>();
  const report = (session: Session, problems: readonly Shown[]) => {
    const byCell = new Map<string, [vscode.Uri, vscode.Diagnostic[]]>();
    for (const uri of reported.get(session) ?? []) byCell.set(uri.toString(), [uri, []]);
    for (const shown of problems) {
      const { uri } = shown.location;
      const [, others] = byCell.get(uri.toString()) ?? [uri, []];
      byCell.set(uri.toString(), [uri, [...others, diagnostic(shown)]]);
    }
    collection.set([...byCell.values()]);
    reported.set(
      session,
      [...byCell.values()].flatMap(([uri, found]) => (found.length > 0 ? [uri] : [])),
    );
  };
  return vscode.Disposable.from(
    collection,
    sessions.onDidAnswer((session) => session.answer && report(session, shownProblems(session.answer))),
    sessions.onDidClose((session) => {
      report(session, []);
      reported.delete(session);
    }),
  );
}

/** A problem with its place in the notebook, and the other places that belong to it. */
interface Shown {
  readonly problem: Problem;
  readonly location: vscode.Location;
  readonly places: readonly vscode.DiagnosticRelatedInformation[];
}

/** The problems of the blocks, and of the file around them. Those in a used sheet are told at its `use`. */
function shownProblems({ result, laid, open }: Answer): readonly Shown[] {
  const inBlocks = result.cells.flatMap(({ cell, code, problems }) =>
    problems.flatMap((problem) => {
      const location = locationInBlock(laid, cell, code, problem.at);
      const places = problem.places.flatMap((place) => {
        const number = place.cell ?? cell;
        const at = locationInBlock(laid, number, result.cells[number]?.code ?? '', place.at);
        return at ? [new vscode.DiagnosticRelatedInformation(at, place.label)] : [];
      });
      return location ? [{ problem, location, places }] : [];
    }),
  );
  const { sheet, tableProblems } = open.loaded;
  const own = tableProblems.flatMap(({ problem, path }) => (path === null ? [problem] : []));
  const inFile = [...sheet.problems, ...own].flatMap((problem) => {
    const location = locationInFile(laid, problem.at);
    const places = problem.places.flatMap((place) => {
      const at = locationInFile(laid, place.at);
      return at ? [new vscode.DiagnosticRelatedInformation(at, place.label)] : [];
    });
    return location ? [{ problem, location, places }] : [];
  });
  return [...inBlocks, ...inFile];
}

function diagnostic({ problem, location, places }: Shown): vscode.Diagnostic {
  const made = new vscode.Diagnostic(location.range, problem.message, severities[problem.severity]);
  made.source = 'Ampwright';
  made.code = problem.code;
  made.relatedInformation = [...places];
  return made;
}
