// Values in prose: which links are values, and how saving brings them up to date.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { type ProseValue, proseValueProblems } from '../../src/sheet/prose-values.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { writeSheet } from '../../src/sheet/write-sheet.ts';
import { markdownish } from './support.ts';

const ENTRIES: Readonly<Record<string, string>> = { I_n: '34.40 A', eta: '92.4 %', 'K.I_AC3': '40 A', t: 'a [b] | *c* <i>', Kiln: '1' };

function valueText({ name, column, withUncertainty }: ProseValue): string | null {
  const text = ENTRIES[column === null ? name : `${name}.${column}`] ?? null;
  return text !== null && withUncertainty ? `${text} ± 0.69 A` : text;
}

/** Refreshes the values of `before`; a second time changes nothing. */
function check(before: string, after = before): void {
  const written = writeSheet(readSheet(before), { valueText });
  assert.equal(written, after);
  assert.equal(writeSheet(readSheet(written), { valueText }), written);
}

describe('a value in prose', () => {
  it('is a link to the name of an entry; saving refreshes its text', () => {
    check('The motor draws [1 A](#I_n) at full load.', 'The motor draws [34.40 A](#I_n) at full load.');
    check('[](#I_n) and [x](#I_n "full load")', '[34.40 A](#I_n) and [34.40 A](#I_n "full load")');
  });
  it('may be a column of a chosen row', () => check('[?](#K.I_AC3)', '[40 A](#K.I_AC3)'));
  it('may have a Greek name, also as an address spells it', () => check('[?](#η) [?](#%CE%B7)', '[92.4 %](#η) [92.4 %](#%CE%B7)'));
  it('shows its uncertainty where the author wrote one', () => {
    check('[1 A ± 1 A](#I_n), [1](#I_n)', '[34.40 A ± 0.69 A](#I_n), [34.40 A](#I_n)');
  });
  it('keeps emphasis around it', () =>
    check('**[1](#I_n)** [**1**](#I_n) [_1_](#I_n)', '**[34.40 A](#I_n)** [**34.40 A**](#I_n) [_34.40 A_](#I_n)'));
  it('is found in headings, lists, quotes and tables, with any line ends', () => {
    check('# Draws [1](#I_n)\n\nT [1](#I_n)\n===\n', '# Draws [34.40 A](#I_n)\n\nT [34.40 A](#I_n)\n===\n');
    check(
      '- a\r\n  - b [1](#I_n)\r\n> q\r\n> [1](#I_n), [1](#I_n)\r\n',
      '- a\r\n  - b [34.40 A](#I_n)\r\n> q\r\n> [34.40 A](#I_n), [34.40 A](#I_n)\r\n',
    );
    check('| a | b |\n| - | - |\n| [1](#I_n) | x\\|[1](#I_n) |\n', '| a | b |\n| - | - |\n| [34.40 A](#I_n) | x\\|[34.40 A](#I_n) |\n');
  });
  it('may be broken over two lines', () => check('draws [1\nA](#I_n) now', 'draws [34.40 A](#I_n) now'));
  it('is written so that it reads as plain text', () => check('[x](#t)', '[a \\[b\\] \\| \\*c\\* \\<i>](#t)'));
  it('is none in code, comments, HTML, escapes and link definitions', () => {
    check('`[1](#I_n)` ``` [1](#I_n) ```');
    check('    [1](#I_n)\n\n~~~\n[1](#I_n)\n~~~\n\n<!-- [1](#I_n) -->\n\nx <a title="[1](#I_n)"> \\[1](#I_n)\n');
    check('[1][a] [a]\n\n[a]: #I_n\n');
    check('![1](#I_n) [1](other.md#I_n) [1]( #I_n)');
  });
  it('is none inside a calc block or recorded results', () => {
    check(
      '```ampwright\n# [1](#I_n)\n```\n\n<!-- results -->\n| result | value | note |\n| :-- | --: | :-- |\n| [1](#I_n) | | |\n<!-- end results -->\n',
    );
  });
  it('stays as it is where no entry has its name', () => check('[1](#other) [1](#I_n.x) [1](#I_n.x.y) [see](#2-scope) [x](#)'));
  it('stays as it is in a region with conflict markers', () =>
    check('<<<<<<< a\n[1](#I_n)\n=======\n[2](#I_n)\n>>>>>>> b\n\n# T\n\n[1](#I_n)\n'));
});

describe('a link in prose', () => {
  const problems = (text: string) => {
    const sheet = readSheet(text);
    return proseValueProblems(sheet.values, (value) => valueText(value) !== null).map(
      (p) => `${p.severity}: ${text.slice(p.at.start, p.at.end)}: ${p.message}`,
    );
  };
  it('to a name that an entry and a heading share is an error and stays untouched', () => {
    const text = '# eta\n\n[1](#eta)\n';
    check(text);
    assert.deepEqual(problems(text), [
      'error: [1](#eta): `eta` is the name of an entry and of a heading, so this link is not kept up to date; rename one of them',
    ]);
  });
  it('to a heading is a link', () => {
    assert.deepEqual(problems('# The _kiln_, `M-12`!\n\n# Kiln\n\n# kiln\n\n[a](#the-kiln-m-12) [b](#kiln) [c](#kiln-1) [d](#Kiln)\n'), []);
  });
  it('to neither is a warning', () => {
    assert.deepEqual(problems('[1](#I_m)'), [
      'warning: [1](#I_m): No entry and no heading is named `I_m`, so this value is not kept up to date',
    ]);
  });
});

describe('refreshing values', () => {
  it('changes nothing but the texts of links, in any text', () => {
    fc.assert(
      fc.property(markdownish, (text) => {
        const sheet = readSheet(text);
        const same = writeSheet(sheet, { valueText: (value) => value.text });
        assert.equal(same, text);
        const written = writeSheet(sheet, { valueText: () => 'NEW' });
        const others = (whole: string) => whole.replaceAll(/\[(?:34\.40 A|40 A|2 ± 1|1|NEW)\]/g, '[]');
        assert.equal(others(written), others(text));
      }),
      { numRuns: 1000 },
    );
  });
});
