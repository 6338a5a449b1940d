// The audit sheet: one self-contained HTML page that explains itself, without network and without script.
import { problems } from '../view/ledger/parts.ts';
import type { ProblemView, SheetView } from '../view/model.ts';
import { type ElementNode, element, toHtml } from '../view/node.ts';
import { STYLE } from '../view/style.ts';
import { toView } from '../view/to-view.ts';
import type { ReportInput } from './input.ts';
import { body } from './page/body.ts';
import { htmlDocument } from './page/document.ts';
import { cautions, decisionRule, signatureWords } from './page/fixed-words.ts';
import { PAGE_STYLE, paper } from './page/style.ts';
import { titleBlock, UNTITLED } from './page/title-block.ts';
import type { RegisterInput } from './registers/register.ts';
import { REGISTERS } from './registers.ts';
import { summaryLine } from './summary.ts';

/** The page of a sheet; the same input gives the same bytes. */
export function auditPage(input: ReportInput): string {
  const view = toView(input.result);
  const { frontMatter: front } = input.sheet;
  const title = front.title ?? UNTITLED;
  const registers = registersOf({ ...input, view });
  const running = [front.number, front.revision && `revision ${front.revision}`, title].filter(Boolean).join(' · ');
  return htmlDocument({
    language: front.language ?? 'en',
    title: running,
    style: `${STYLE}${PAGE_STYLE}${paper(running)}`,
    version: input.version,
    body: `<div class="aw-page">
${toHtml(titleBlock({ front, digest: input.digest, version: input.version }))}
${toHtml(summary(view, input))}
${toHtml(contents(registers))}
<main>
<div class="aw-prose" id="sheet">
${body(input, view)}
</div>
<h2 class="aw-part" id="registers">Registers</h2>
${registers.map((r) => toHtml(r.section)).join('\n')}
${toHtml(words('decisions', 'How decisions are made', decisionRule()))}
${toHtml(words('cautions', 'Cautions', cautions()))}
</main>
${toHtml(element('footer', {}, signatureWords()))}
</div>`,
  });
}

function summary(view: SheetView, { sheet }: ReportInput): ElementNode {
  const errors = view.cells
    .flatMap((cell) => [...cell.problems, ...cell.rows.flatMap((row) => row.problems)])
    .filter((p) => p.severity === 'error');
  const file: ProblemView[] = sheet.problems.map((p) => ({ severity: p.severity, code: p.code, message: p.message, mends: [], line: 1 }));
  return element(
    'section',
    { class: 'aw-summary aw-ledger', 'aria-label': 'Summary' },
    element('p', {}, summaryLine(view)),
    errors.length > 0 &&
      element(
        'p',
        {},
        element(
          'strong',
          {},
          `This sheet has ${errors.length} ${errors.length === 1 ? 'error' : 'errors'}; what depends on them is not calculated.`,
        ),
      ),
    problems(file.filter((p) => p.severity === 'error')),
  );
}

interface Section {
  readonly id: string;
  readonly title: string;
  readonly section: ElementNode;
}

function registersOf(input: RegisterInput): Section[] {
  return REGISTERS.flatMap(({ id: name, title, make }) => {
    const content = make(input);
    const id = `register-${name}`;
    if (content === null || content === undefined || content === false) return [];
    return [
      {
        id,
        title,
        section: element(
          'section',
          { class: 'aw-registersection', id, 'aria-labelledby': `${id}-title` },
          element('h3', { id: `${id}-title` }, title),
          content,
        ),
      },
    ];
  });
}

function contents(registers: readonly Section[]): ElementNode {
  const items = [
    { id: 'sheet', title: 'The calculation' },
    ...registers,
    { id: 'register-decisions', title: 'How decisions are made' },
    { id: 'register-cautions', title: 'Cautions' },
  ];
  return element(
    'nav',
    { class: 'aw-contents', 'aria-label': 'Contents' },
    element('ol', {}, ...items.map(({ id, title }) => element('li', {}, element('a', { href: `#${id}` }, title)))),
  );
}

function words(name: string, title: string, content: ElementNode): ElementNode {
  const id = `register-${name}`;
  return element(
    'section',
    { class: 'aw-words', id, 'aria-labelledby': `${id}-title` },
    element('h3', { id: `${id}-title` }, title),
    content,
  );
}
