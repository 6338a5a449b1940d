// Values at the line's end: what each statement came to, beside its own line.
import { resultOf } from '../run/evaluate.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import type { StatementResult } from '../run/result.ts';
import { answerText } from './answer-text.ts';

/** `offset`: the end of a line of the block's code. */
export interface InlayValue {
  readonly offset: number;
  readonly text: string;
}

/** The values of a block's statements; an input says its own value already, and an error is marked where it stands. */
export function inlayValues(open: OpenSheet, number: number): readonly InlayValue[] {
  const { code, statements } = resultOf(open).cells[number] ?? { code: '', statements: [] };
  return statements.flatMap((statement) => {
    const text = saysItself(statement) ? null : answerText(statement);
    return text === null ? [] : [{ offset: lineEnd(code, statement.statement.at.start), text: `${mark(statement)}${text}` }];
  });
}

function saysItself(result: StatementResult): boolean {
  const inError = 'missing' in result && result.missing?.kind === 'error';
  return inError || (result.kind === 'entry' && result.role === 'input');
}

const mark = (result: StatementResult) => ((result.kind === 'entry' || result.kind === 'column') && result.missing === null ? '= ' : '');

function lineEnd(code: string, from: number): number {
  const found = code.slice(from).search(/[\r\n]/);
  return found < 0 ? code.length : from + found;
}
