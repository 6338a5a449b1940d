// `ampwright functions [NAME]`: the built-in functions with their forms, formulas, sources and limits.
import { exampleResult } from '../../run/example-result.ts';
import { type FunctionDescription, functionList } from '../../run/function-list.ts';
import { nearSpellings } from '../../text/near.ts';
import { columns, padRight, visible, wrap } from '../columns.ts';
import type { Declare } from '../command.ts';
import type { Stream } from '../terminal.ts';

export const functions: Declare = (program, { terminal: { out, err }, end }) => {
  program
    .command('functions')
    .summary('list the built-in functions, or explain one')
    .description(
      'Lists the functions of the trade library and of the mathematics; with a name, explains that one: formula, source, limits, example; ' +
        'with another word, lists those that speak of it.',
    )
    .argument('[NAME]', 'a function, or a word such as torque')
    .option('--json', 'as JSON')
    .action((name: string | undefined, { json = false }: { json?: boolean }) => {
      const all = functionList();
      const chosen = name === undefined ? all : all.filter((f) => f.name === name);
      if (name !== undefined && chosen.length === 0) {
        const near = nearSpellings(
          name,
          all.map((f) => f.name),
        );
        const about = json || near.length > 0 ? [] : thatSpeakOf(name, all);
        const instead = near.length > 0 ? `; did you mean ${near.join(', ')}` : about.length > 0 ? '; these speak of it:' : '';
        err.line(`${err.paint('red', 'error:')} there is no function ${visible(name)}${instead}`);
        list(about, out);
        return end(2);
      }
      if (json) out.write(`${JSON.stringify(chosen, null, 2)}\n`);
      else if (name === undefined) list(all, out);
      else for (const one of chosen) explain(one, out);
    });
};

/** The functions that have a word in their name or description. */
function thatSpeakOf(word: string, all: readonly FunctionDescription[]): readonly FunctionDescription[] {
  const wanted = word.toLowerCase();
  return all.filter(({ name, description }) => `${name} ${description ?? ''}`.toLowerCase().includes(wanted));
}

/** One line a function, under the library sheet that it belongs to. */
function list(all: readonly FunctionDescription[], out: Stream): void {
  const sheets = [...new Set(all.map((f) => f.library))];
  for (const [i, sheet] of sheets.entries()) {
    const own = all.filter((f) => f.library === sheet);
    const width = Math.min(48, Math.max(...own.map((f) => columns(f.form))));
    if (i > 0) out.line();
    out.line(out.paint('bold', sheet ?? 'mathematics'));
    for (const { form, description } of own) {
      const lines = wrap(description ?? '', Math.max(30, out.width - width - 4));
      const indent = `\n${' '.repeat(width + 4)}`;
      out.line(`  ${padRight(form, width)}${columns(form) > width ? indent : '  '}${lines.map((l) => out.paint('dim', l)).join(indent)}`);
    }
  }
}

function explain(one: FunctionDescription, out: Stream): void {
  const needs = one.needs.map(({ condition, because }) => (because === null ? condition : `${condition} because "${because}"`));
  const rows: readonly (readonly [string, readonly string[]])[] = [
    ['formula', [one.formula]],
    ['needs', needs],
    ['source', one.source === null ? [] : [one.source]],
    ['example', one.example === null ? [] : [`${one.example} = ${exampleResult(one) ?? 'no value'}`]],
    ['library', [one.library ?? 'mathematics']],
  ];
  out.line(out.paint('bold', one.form));
  if (one.description !== null) out.line(`  ${one.description}`);
  for (const [head, texts] of rows) {
    const lines = texts.flatMap((text) => wrap(text, Math.max(40, out.width - 12)).map((line, i) => (i === 0 ? line : `  ${line}`)));
    for (const [i, line] of lines.entries()) out.line(`  ${padRight(i === 0 ? head : '', 8)}  ${line}`);
  }
}
