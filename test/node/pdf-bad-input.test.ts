// What a sheet may hold that paper is not made for: too long, too wide, too much, any writing, and what would run elsewhere.
import assert from 'node:assert/strict';
import { made, sheet, wordsOf } from '../support/made-pdf.ts';

/** Blanks do not count: lines break where there is room. */
const bare = (text: string) => text.replace(/\s/g, '');

describe('the sheet as PDF, whatever the sheet holds', function () {
  this.timeout(120_000);

  describe('shows as text and runs nothing of', () => {
    const rows: readonly (readonly [what: string, text: string, shown: string])[] = [
      [
        'a title with markup',
        sheet('x = 1', { front: `title: '#import "x.typ" $a$ \\ *b* <s> // c /* d */ @e #{panic()} "]'\n` }),
        '#import "x.typ" $a$ \\ *b* <s> // c /* d */ @e #{panic()} "]',
      ],
      [
        'a title with a script',
        sheet('x = 1', { front: "title: '</title><script>alert(1)</script>'\n" }),
        '</title><script>alert(1)</script>',
      ],
      [
        'markup in prose',
        sheet('x = 1', { prose: 'The #panic("x") of $x$ <label> @ref \\\\ and <b>b</b>.' }),
        '#panic("x") of $x$ <label> @ref \\ and <b>b</b>.',
      ],
      ['code of the typesetter in a fence', sheet('x = 1', { prose: '```typst\n#read("/etc/passwd")\n```' }), '#read("/etc/passwd")'],
      ['texts in a block', sheet('x = 1 m "#panic() $x$" from plate "\\\\ #eval"\nshall x < 2 m because "#{1/0}"'), '#{1/0}'],
      ['a picture', sheet('x = 1', { prose: '![the panel](panel.png)' }), '[picture: the panel]'],
      ['a link that runs', sheet('x = 1', { prose: '[press](javascript:alert(1)) <javascript:alert(2)>' }), '[press](javascript:alert(1))'],
      ['direction marks', sheet('x = 1', { front: 'title: "a \\u202E b"\n' }), 'a \\u{202e} b'],
      ['conflict marks of a merge', '---\nampwright: 1\n---\n\n<<<<<<< a\n#x\n=======\ny\n>>>>>>> b\n', '<<<<<<< a #x ======= y >>>>>>> b'],
    ];
    for (const [what, text, shown] of rows)
      it(what, async () => {
        const one = await made(text);
        assert.ok(bare(wordsOf(one)).includes(bare(shown)), wordsOf(one));
        assert.deepEqual(one.pdf.active, []);
        assert.deepEqual(
          one.pdf.pages.flatMap(({ links }) => links),
          [],
        );
        assert.doesNotMatch(Buffer.from(one.bytes).toString('latin1'), /\/(JavaScript|JS|Launch|EmbeddedFile|OpenAction|AA|RichMedia)\b/);
      });

    it('but leads to the web, with the address in sight', async () => {
      const one = await made(sheet('x = 1', { prose: 'See [the code](https://example.org/a?b=c&d=1) and [x](#x).' }));
      assert.match(wordsOf(one), /the code \(https:\/\/example\.org\/a\?b=c&d=1\)/);
      assert.deepEqual(
        one.pdf.pages.flatMap(({ links }) => links),
        ['https://example.org/a?b=c&d=1'],
      );
    });
  });

  describe('has names in', () => {
    const rows = [
      'Ångström Çelik',
      'Ελένη Παππά',
      'Олена Шевченко',
      'مهندس',
      'מהנדס',
      '陳大文',
      'かな カナ',
      '김민준',
      'हिन्दी',
      'Đặng Thị',
      '⌀ 30 → 40 ≤ √2',
    ];
    for (const name of rows)
      it(name, async () => {
        const one = await made(sheet('x = 1', { front: `title: "${name}"\nlanguage: ar\n` }));
        assert.deepEqual(one.unshown, []);
        assert.match(one.pdf.metadata, new RegExp(name));
      });

    it('writing without a typeface as code points, and says so', async () => {
      const one = await made(sheet('x = 1', { front: 'title: "ไทย"\nowner: "😀"\n' }));
      assert.deepEqual([...one.unshown].sort(), ['ท', 'ย', 'ไ', '😀']);
      assert.ok(wordsOf(one).includes('\\u{e44}\\u{e17}\\u{e22}'), wordsOf(one));
    });

    it('every script of Unicode', async () => {
      const some: string[] = [];
      for (let code = 0x20; code < 0x20000; code += code < 0x3000 ? 13 : 211) some.push(String.fromCodePoint(code));
      const one = await made(sheet('x = 1', { prose: some.join('x ').replace(/[\ud800-\udfff](?![\udc00-\udfff])/g, '') }));
      assert.ok(one.unshown.length > 100);
    });
  });

  it('breaks or spells out a formula that is too long for its column', async () => {
    const names = Array.from({ length: 40 }, (_, i) => `length_${i}`);
    const inputs = names.map((name, i) => `${name} = ${i + 1} m from plate "p"`).join('\n');
    const sum = names.join(' + ');
    const one = await made(
      sheet(`${inputs}\nlong = ${sum}\nlonger = 1 m^2 / (${sum}) + (${sum}) * (1 m + sqrt((${sum}) * 1 m)) / (${sum})`),
    );
    for (const name of names) assert.ok(bare(wordsOf(one)).includes(name), name);
    // Nothing reaches over the edge of the page.
    const { data, width, height } = await one.pdf.pages[3]!.picture(1);
    const edge = Array.from({ length: height }, (_, y) => data[(y * width + width - 20) * 4]);
    assert.ok(edge.every((red) => red === 255));
  });

  it('repeats the heads of a table over many pages', async () => {
    const rows = Array.from({ length: 300 }, (_, i) => `| K${i} | ${i} |`).join('\n');
    const one = await made(sheet('x = 1', { prose: `Table t — Many from datasheet "p"\n\n| type | I / A |\n| --- | --: |\n${rows}` }));
    const pages = one.pdf.pages.filter(({ text }) => /K\d+ \d+ K\d+ \d+ /.test(text));
    assert.ok(pages.length >= 5);
    for (const { text } of pages) assert.match(text, /type I \/ A/);
  });

  it('makes 300 pages, numbered to the last', async () => {
    const prose = Array.from({ length: 16_000 }, (_, i) => `Reading ${i + 1} of the survey.`).join('\n\n');
    const { pages } = (await made(sheet('x = 1', { prose }))).pdf;
    assert.ok(pages.length >= 300, `${pages.length} pages`);
    assert.match(pages.map(({ text }) => text).join('\n'), /Reading 16000 of the survey\./);
    assert.match(pages.at(-1)!.text, new RegExp(`page ${pages.length} of ${pages.length}`));
  });

  it('shows the errors of a sheet at their place', async () => {
    const one = await made(sheet('x = 1 m + 1 s\ny = 2 m from plate "p"'));
    assert.match(wordsOf(one), /This sheet has 1 error; what depends on them is not calculated/);
    assert.match(wordsOf(one), /Error, line 1/);
    assert.match(wordsOf(one), /2 m plate p/);
  });

  it('shows a sheet without front matter and date', async () => {
    const one = await made('Just prose.');
    assert.match(wordsOf(one), /Calculation sheet without a title .*Date of issue not given .*Just prose\./);
    assert.match(one.pdf.metadata, /CreateDate>1970-01-01T/);
  });
});
