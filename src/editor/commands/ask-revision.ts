// Asks which revision to compare with: where the work left the default branch first, then the sheet's changes, branches and tags.
import * as vscode from 'vscode';
import type { RevisionChoices, RevisionName } from '../../node/revision-choices.ts';

/** `revision` null: where the present work left the default branch. */
export interface ChosenRevision {
  readonly revision: string | null;
  readonly label: string;
}

interface Choice extends vscode.QuickPickItem {
  /** Of a separator, none. */
  readonly chosen?: ChosenRevision | 'another';
}

export async function askRevision(choices: RevisionChoices): Promise<ChosenRevision | undefined> {
  const picked = await vscode.window.showQuickPick(choicesOf(choices), {
    title: 'Compare Sheet with a Revision',
    placeHolder: 'The older revision',
    matchOnDescription: true,
    matchOnDetail: true,
  });
  if (picked?.chosen !== 'another') return picked?.chosen;
  const name = await vscode.window.showInputBox({
    title: 'Compare Sheet with a Revision',
    prompt: 'A branch, a tag, a commit, or what git makes of one, such as HEAD~2',
  });
  return name?.trim() ? { revision: name.trim(), label: name.trim() } : undefined;
}

const NAMES: readonly (readonly [RevisionName['kind'], string])[] = [
  ['branch', 'branches'],
  ['tag', 'tags'],
  ['remote branch', 'branches of the server'],
];

function choicesOf({ base, changes, names }: RevisionChoices): readonly Choice[] {
  const start: readonly Choice[] =
    'because' in base
      ? []
      : [
          {
            label: base.name,
            description: `${base.date} · ${base.short}`,
            detail: base.subject,
            chosen: { revision: null, label: base.name },
          },
        ];
  const commits = changes.map(({ short, date, author, subject }) => ({
    label: subject || short,
    description: `${date} · ${short} · ${author}`,
    chosen: { revision: short, label: short },
  }));
  const named = NAMES.flatMap(([kind, title]) => {
    const items = names
      .filter((name) => name.kind === kind)
      .map(({ name, date, subject }) => ({ label: name, description: `${date} · ${subject}`, chosen: { revision: name, label: name } }));
    return section(title, items);
  });
  return [
    ...start,
    ...section('changes of this sheet', commits),
    ...named,
    ...section('', [{ label: 'Another revision…', chosen: 'another' as const }]),
  ];
}

function section(label: string, items: readonly Choice[]): readonly Choice[] {
  return items.length === 0 ? [] : [{ label, kind: vscode.QuickPickItemKind.Separator }, ...items];
}
