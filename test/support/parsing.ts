// Tokens, trees and problems of a calc block as short text, for tables and fixtures.
import type { Bounds, Expression } from '../../src/language/ast.ts';
import { lex } from '../../src/language/lexer.ts';
import { parse } from '../../src/language/parser.ts';
import { dateText } from '../../src/text/date.ts';
import { lineMap, positionAt } from '../../src/text/lines.ts';
import type { Mend, Problem } from '../../src/text/problem.ts';

/** Tokens side by side: `<400 V>` a quantity, `<:kW>` a unit behind a colon, `<²>` a power, `'and'` a reserved word, `<!$>` an error. */
export function tokensOf(text: string): string {
  return lex(text)
    .tokens.map((token) => {
      const written = text.slice(token.at.start, token.at.end);
      switch (token.kind) {
        case 'quantity':
          return `<${token.text} ${token.unit.text}>`;
        case 'unit':
          return `<:${token.unit.text || '1'}>`;
        case 'number':
          return token.text;
        case 'date':
          return token.days === null ? '<no date>' : `<${dateText(token.days)}>`;
        case 'text':
          return JSON.stringify(token.value);
        case 'name':
          return token.name;
        case 'word':
          return `'${token.word}'`;
        case 'superscript':
          return `<^${token.power}>`;
        case 'operator':
          return token.operator;
        case 'punctuation':
          return token.mark;
        case 'plusminus':
          return '±';
        case 'error':
          return `<!${written}>`;
        default:
          return token satisfies never;
      }
    })
    .join(' ');
}

/** The structure of an expression: every node with parts in braces, parentheses of the text as parentheses. */
export function shape(node: Expression): string {
  switch (node.kind) {
    case 'quantity':
      return number(node) + limits(node.bounds);
    case 'readings':
      return `readings ${node.of === null ? `[${(node.items ?? []).map(shape).join(', ')}]` : shape(node.of)}${limits(node.bounds)}`;
    case 'date':
      return dateText(node.days);
    case 'text':
      return JSON.stringify(node.value);
    case 'yesno':
      return node.value ? 'yes' : 'no';
    case 'name':
      return node.name;
    case 'row':
      return 'row';
    case 'call':
      return `${node.callee.name}(${node.args.map((a) => (a.name === null ? '' : `${a.name.name} = `) + shape(a.value)).join(', ')})`;
    case 'member':
      return `${shape(node.of)}.${node.column.name}`;
    case 'list':
      return `[${node.items.map(shape).join(', ')}]`;
    case 'negate':
      return `{-${shape(node.operand)}}`;
    case 'sum':
      return `{${node.terms.map((t, i) => (i === 0 ? '' : t.sign < 0 ? ' - ' : ' + ') + shape(t.operand)).join('')}}`;
    case 'product':
      return `{${node.factors.map((f, i) => (i === 0 ? '' : f.inverse ? ' / ' : ' * ') + shape(f.operand)).join('')}}`;
    case 'power':
      return `{${shape(node.base)} ^ ${shape(node.exponent)}}`;
    case 'squareRoot':
      return `{√${shape(node.operand)}}`;
    case 'comparison':
      return `{${node.operands.map((o, i) => (i === 0 ? '' : ` ${node.relations[i - 1]!.relation} `) + shape(o)).join('')}}`;
    case 'and':
    case 'or':
      return `{${node.operands.map(shape).join(` ${node.kind} `)}}`;
    case 'not':
      return `{not ${shape(node.operand)}}`;
    case 'if':
      return `{if ${shape(node.condition)} then ${shape(node.then)} else ${shape(node.otherwise)}}`;
    case 'choice':
      return `{${node.order}${node.column === null ? '' : ` ${node.column.name}`} of ${node.table.name}${where(node.where)}}`;
    case 'lookUp':
      return `{the ${node.column.name} of ${node.table.name}${where(node.where)}}`;
    case 'rootOf':
      return `{root of ${shape(node.equation)} over ${node.over.variable.name} from ${shape(node.over.from)} to ${shape(node.over.to)}}`;
    case 'group':
      return `(${shape(node.inner)})`;
    case 'hole':
      return '…';
    default:
      return node satisfies never;
  }
}

/** The structure of the right side of `x = …`; the problems' codes instead, where there are errors. */
export function shapeOf(text: string): string {
  const { statements, problems } = parse(`x = ${text}`);
  const errors = problems.filter((problem) => problem.severity === 'error');
  const [statement] = statements;
  if (errors.length > 0 || statement?.kind !== 'entry') return errors.map((problem) => problem.code).join(', ');
  return shape(statement.value);
}

/** The tree without places, so that two texts can be compared for their meaning. */
export function meaningOf(text: string): unknown {
  const bare = (key: string, value: unknown): unknown => {
    if (key === 'at' || key === 'unitAt') return undefined;
    if (key === 'operator') return value === null ? null : 'operator';
    return key === 'unit' && value !== null ? (value as { text: string }).text : value;
  };
  const { statements, problems } = parse(text);
  return JSON.parse(JSON.stringify({ statements, codes: problems.map((problem) => problem.code) }, bare));
}

/** The text after a mend. */
export function mended(text: string, mend: Mend): string {
  const edits = [...mend.edits].sort((a, b) => b.at.start - a.at.start);
  return edits.reduce((t, { at, text: by }) => t.slice(0, at.start) + by + t.slice(at.end), text);
}

/** A block with what is wrong written below its lines, and what its statements are written below all. */
export function annotated(source: string): string {
  const { statements, problems } = parse(source);
  const map = lineMap(source);
  const lines = source.split('\n').map((line) => [`  ${line}`.trimEnd()]);
  for (const problem of problems) lines[positionAt(map, problem.at.start).line]!.push(...annotation(source, problem));
  const read = statements.map((statement) => {
    const name = 'name' in statement && statement.name !== null ? ` ${statement.name.name}` : '';
    return `${statement.kind}${name}${statement.broken ? ' (broken)' : ''}`;
  });
  return `${[...lines.flat(), `| reads: ${read.join(', ') || 'nothing'}`].join('\n')}\n`;
}

export function annotation(source: string, problem: Problem): string[] {
  const { column } = positionAt(lineMap(source), problem.at.start);
  const marker = '^'.repeat(Math.max(1, source.slice(problem.at.start, problem.at.end).split('\n')[0]!.length));
  const severity = problem.severity === 'error' ? '' : `${problem.severity} `;
  const places = problem.places.map((place) => `|   also: \`${source.slice(place.at.start, place.at.end)}\` ${place.label}`);
  const mends = problem.mends.map((mend) => `|   ${mend.title}: ${changedLines(source, mended(source, mend))}`);
  return [`| ${' '.repeat(column)}${marker} ${severity}${problem.code}`, `|   ${problem.message}`, ...places, ...mends];
}

/** The lines of the new text that are not in the old one. */
function changedLines(before: string, after: string): string {
  const [old, lines] = [before.split('\n'), after.split('\n')];
  let end = 0;
  while (end < Math.min(old.length, lines.length) - 1 && old.at(-1 - end) === lines.at(-1 - end)) end++;
  let start = 0;
  while (start < Math.min(old.length, lines.length) - end - 1 && old[start] === lines[start]) start++;
  return lines.slice(start, lines.length - end).join(' ⏎ ');
}

function number(literal: { readonly number: string; readonly unit: { readonly text: string } | null }): string {
  return literal.unit === null ? literal.number : `${literal.number} ${literal.unit.text}`;
}

function limits(bounds: Bounds | null): string {
  if (bounds === null) return '';
  if (bounds.kind === 'within') return ` within ${number(bounds.from)} to ${number(bounds.to)}`;
  const { coverage } = bounds;
  const factor = coverage === null ? '' : ` k ${coverage.k}${coverage.nu === null ? '' : ` nu ${coverage.nu}`}`;
  return ` ± ${bounds.parts.map(number).join(' + ')}${factor}`;
}

function where(condition: Expression | null): string {
  return condition === null ? '' : ` where ${shape(condition)}`;
}
