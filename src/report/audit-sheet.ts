// The audit sheet as page and paper show it: its title, how it stands, its parts, the registers made from it, and the words of every sheet.
import { problems } from '../view/ledger/parts.ts';
import type { ProblemView, SheetView } from '../view/model.ts';
import { type ElementNode, element, flat } from '../view/node.ts';
import { toView } from '../view/to-view.ts';
import { cautions, decisionRule, signatureWords } from './fixed-words.ts';
import type { ReportInput } from './input.ts';
import type { RegisterInput } from './registers/register.ts';
import { REGISTERS } from './registers.ts';
import { summaryLine } from './summary.ts';
import { UNTITLED } from './title-block.ts';

export interface AuditSheet {
  readonly view: SheetView;
  readonly title: string;
  /** What stands at the head of every page: number, revision, title. */
  readonly running: string;
  /** BCP 47. */
  readonly language: string;
  readonly summary: ElementNode;
  /** Places of the sheet in their order. */
  readonly contents: readonly Place[];
  readonly registers: readonly Section[];
  /** How decisions are made, and the cautions. */
  readonly words: readonly Section[];
  /** The last paragraph: what signatures are worth. */
  readonly closing: ElementNode;
}

export interface Place {
  readonly id: string;
  readonly title: string;
}

export interface Section extends Place {
  readonly content: readonly ElementNode[];
}

/** The heads of the two parts. */
export const CALCULATION = { id: 'sheet', title: 'The calculation' };
export const REGISTER_PART = { id: 'registers', title: 'Registers' };

export function auditSheet(input: ReportInput): AuditSheet {
  const view = toView(input.result);
  const { frontMatter: front } = input.sheet;
  const title = front.title ?? UNTITLED;
  const registers = registersOf({ ...input, view });
  const words = [
    { id: 'register-decisions', title: 'How decisions are made', content: [decisionRule()] },
    { id: 'register-cautions', title: 'Cautions', content: [cautions()] },
  ];
  return {
    view,
    title,
    running: [front.number, front.revision && `revision ${front.revision}`, title].filter(Boolean).join(' · '),
    language: front.language ?? 'en',
    summary: summary(view, input),
    contents: [CALCULATION, ...registers, ...words],
    registers,
    words,
    closing: signatureWords(),
  };
}

function summary(view: SheetView, { sheet }: ReportInput): ElementNode {
  const errors = view.cells
    .flatMap((cell) => [...cell.problems, ...cell.rows.flatMap((row) => row.problems)])
    .filter((p) => p.severity === 'error');
  const file: ProblemView[] = sheet.problems.map((p) => ({ severity: p.severity, code: p.code, message: p.message, mends: [], line: 1 }));
  const count = `${errors.length} ${errors.length === 1 ? 'error' : 'errors'}`;
  return element(
    'section',
    { class: 'aw-summary aw-ledger', 'aria-label': 'Summary' },
    element('p', {}, summaryLine(view)),
    errors.length > 0 && element('p', {}, element('strong', {}, `This sheet has ${count}; what depends on them is not calculated.`)),
    problems(file.filter((p) => p.severity === 'error')),
  );
}

function registersOf(input: RegisterInput): Section[] {
  return REGISTERS.flatMap(({ id, title, make }) => {
    const content = flat([make(input)]).filter((node) => typeof node === 'object');
    return content.length === 0 ? [] : [{ id: `register-${id}`, title, content }];
  });
}
