// Front matter: fields after ISO 7200, wrong values reported where they stand, everything else kept.
import assert from 'node:assert/strict';
import type { FrontMatter } from '../../src/sheet/front-matter.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';

/** Reads the lines between two `---`; compares the fields given, and the problems as `severity code: place: message`. */
function check(lines: readonly string[], fields: Partial<FrontMatter>, problems: readonly string[] = [], end = '\n'): void {
  const text = ['---', ...lines, '---', '', 'Text.', ''].join(end);
  const sheet = readSheet(text);
  const found = Object.fromEntries(Object.keys(fields).map((key) => [key, sheet.frontMatter[key as keyof FrontMatter]]));
  assert.deepEqual(found, fields);
  assert.deepEqual(
    sheet.problems.map((p) => `${p.severity}: ${text.slice(p.at.start, p.at.end)}: ${p.message}`),
    problems,
  );
}

const covers = `sha256:${'0f'.repeat(32)}`;

describe('the front matter', () => {
  it('has the title block, codes, digits and sources', () => {
    check(
      [
        'ampwright: 1',
        'title: Starter for kiln drum motor M-12',
        'number: CALC-0412',
        'revision: B',
        'issued: 2026-11-20',
        'owner: Lindrow Mill (invented)',
        'status: for review',
        'codes: [IEC 60947-4-1:2018, NFPA 70-2008]',
        'sources: required',
        'digits: 5',
      ],
      {
        ampwright: 1,
        title: 'Starter for kiln drum motor M-12',
        number: 'CALC-0412',
        revision: 'B',
        issued: '2026-11-20',
        owner: 'Lindrow Mill (invented)',
        status: 'for review',
        codes: ['IEC 60947-4-1:2018', 'NFPA 70-2008'],
        sources: 'required',
        digits: 5,
      },
    );
  });
  it('has defaults where it says nothing', () => {
    check([], { title: null, codes: [], sources: 'optional', digits: 4, signatures: [] });
    check(['title:', 'digits: # later'], { title: null, digits: 4 });
  });
  it('keeps texts as they are written: a revision 1.0 is no number, a number 0412 keeps its zero', () => {
    check(['revision: 1.0', 'number: 0412', 'status: no', 'title: "a: b"'], {
      revision: '1.0',
      number: '0412',
      status: 'no',
      title: 'a: b',
    });
  });
  it('reads with any line end', () => {
    for (const end of ['\r\n', '\r']) check(['title: T', 'codes:', '  - a', '  - b'], { title: 'T', codes: ['a', 'b'] }, [], end);
  });
  it('takes one code without a list', () => check(['codes: NFPA 70-2008'], { codes: ['NFPA 70-2008'] }));

  it('reports a wrong value where it stands and keeps the other fields', () => {
    check(['digits: 16', 'title: T'], { digits: 4, title: 'T' }, [
      'error: 16: `digits` wants the number of significant digits, from 1 to 15',
    ]);
    check(['digits: four'], { digits: 4 }, ['error: four: `digits` wants the number of significant digits, from 1 to 15']);
    check(['issued: 2026-02-30'], { issued: null }, ['error: 2026-02-30: `issued` wants a day of the calendar, written as 2026-11-20']);
    check(['issued: 20.11.2026'], { issued: null }, ['error: 20.11.2026: `issued` wants a day of the calendar, written as 2026-11-20']);
    check(['sources: yes'], { sources: 'optional' }, ['error: yes: `sources` is `required` or `optional`']);
    check(['title: [a]'], { title: null }, ['error: [a]: `title` wants a text']);
    check(['codes: {a: b}'], { codes: [] }, ['error: {a: b}: `codes` wants a list of texts, such as `[IEC 60947-4-1:2018]`']);
    check(['ampwright: 2'], { ampwright: null }, [
      'error: 2: `ampwright` is the version of the file format; this version of Ampwright reads 1',
    ]);
  });
  it('reports broken YAML at its field and reads the others', () => {
    check(['title: Starter: M-12', 'digits: 5'], { title: null, digits: 5 }, [
      'error: Starter: M-12: `title` is no valid YAML: a text with `: ` in it stands in quotes',
    ]);
    check(['codes: [a, b', 'digits: 5'], { codes: [], digits: 5 }, [
      'error: b: `codes` is no valid YAML: a bracket is not closed, or a line is not indented far enough',
    ]);
    check(['title: "T', 'digits: 5'], { title: null, digits: 5 }, [
      'error: T: `title` is no valid YAML: a quotation mark or bracket is missing',
    ]);
    check(['just text', '{title: T}', 'digits: 5'], { title: null, digits: 5 }, [
      'error: just text: The front matter holds lines `key: value`; this is none',
      'error: {title: T}: The front matter holds lines `key: value`; this is none',
    ]);
  });
  it('warns about an unknown key and says what was likely meant', () => {
    check(['titel: T', 'colour: red'], { title: null }, [
      'warning: titel: `titel` means nothing to Ampwright and is kept as it is; did you mean `title`',
      'warning: colour: `colour` means nothing to Ampwright and is kept as it is',
    ]);
    check(['constructor: a', '__proto__: b'], { title: null }, [
      'warning: constructor: `constructor` means nothing to Ampwright and is kept as it is',
      'warning: __proto__: `__proto__` means nothing to Ampwright and is kept as it is',
    ]);
  });
  it('takes the first of two like keys', () => {
    check(['title: A', 'title: B'], { title: 'A' }, ['error: title: `title` stands in the front matter twice; the first one counts']);
  });
  it('reads no aliases and no tags, so that nothing can multiply', () => {
    check(['codes: &a [x]'], { codes: ['x'] });
    check(['codes: [&a x, *a]'], { codes: [] }, [
      'error: *a: YAML anchors and aliases (`&a`, `*a`) are not read here; write the value out, or in quotes if it begins so',
    ]);
    check(['title: !!js/function x'], { title: null }, [
      'error: !!js/function: `title` is no valid YAML: tags (`!name`) are not read here; a text that begins with `!` stands in quotes',
    ]);
  });
  it('survives any nesting', () => {
    for (const bracket of ['[', '{a: ', '- ']) {
      const sheet = readSheet(`---\ntitle: ${bracket.repeat(30_000)}\ndigits: 5\n---\n`);
      assert.equal(sheet.frontMatter.digits, 5);
      assert.equal(sheet.problems[0]?.severity, 'error');
    }
  });
});

describe('signatures in the front matter', () => {
  it('are a list of entries', () => {
    const lines = [
      'signatures:',
      '  - role: prepared',
      '    name: R. Osei',
      '    date: 2026-11-20',
      `    covers: ${covers}`,
      '    version: 1.0.0',
    ];
    const { signatures } = readSheet(`---\n${lines.join('\n')}\n---\n`).frontMatter;
    assert.deepEqual(
      signatures.map(({ at: _, ...entry }) => entry),
      [{ role: 'prepared', name: 'R. Osei', date: '2026-11-20', covers, version: '1.0.0' }],
    );
  });
  it('with a mistake are reported one by one, the others stay', () => {
    const good = `  - {role: checked, name: T. Nkemelu, date: 2026-11-21, covers: ${covers}}`;
    const text = `---\nsignatures:\n  - role: prepared\n    name: R. Osei\n    date: soon\n    covers: sha256:…\n${good}\n  - x\n---\n`;
    const sheet = readSheet(text);
    assert.deepEqual(
      sheet.frontMatter.signatures.map((s) => s.role),
      ['checked'],
    );
    assert.deepEqual(
      sheet.problems.map((p) => `${text.slice(p.at.start, p.at.end)}: ${p.message}`),
      ['soon: `date` wants a day of the calendar, written as 2026-11-20', 'x: `signatures` wants entries with role, name, date and covers'],
    );
  });
  it('that lack a field say which', () => {
    check(['signatures:', '  - role: prepared', '    signed: yes'], { signatures: [] }, [
      'error: role: prepared\n    signed: yes: `name` wants the name of who signs',
      'error: role: prepared\n    signed: yes: `date` wants a day, written as 2026-11-20',
      'error: role: prepared\n    signed: yes: `covers` wants the digest that the signature covers',
      'warning: signed: `signed` means nothing to Ampwright and is kept as it is',
    ]);
    check(['signatures: me'], { signatures: [] }, ['error: me: `signatures` wants a list of entries with role, name, date and covers']);
  });
});
