// Texts of any length, each one thing over and over: what people write, and what would be dear to read.

/** By name: the text with `n` of them. */
export type Shapes = Readonly<Record<string, (n: number) => string>>;

// Numbers of one length, so that names and texts keep theirs.
const FIRST = 10_000;

const each = (n: number, line: (i: number) => string, between = '\n') => Array.from({ length: n }, (_, i) => line(FIRST + i)).join(between);

export const BLOCKS: Shapes = {
  entries: (n) => each(n, (i) => `x_${i} = ${i} V ± 1 % from plate "M-${i}"`),
  'a chain of entries': (n) => `x_${FIRST} = 1 V\n${each(n, (i) => `x_${i + 1} = x_${i} + 1 V`)}`,
  'entries that read one': (n) => `x = 1 V\n${each(n, (i) => `y_${i} = x * ${i}`)}`,
  'one entry that reads all': (n) => `${each(n, (i) => `x_${i} = ${i} V`)}\ny = ${each(n, (i) => `x_${i}`, ' + ')}`,
  'a name defined again and again': (n) => each(n, (i) => `x = ${i} V`),
  'entries in a circle': (n) => `x_${FIRST} = x_${FIRST + n}\n${each(n, (i) => `x_${i + 1} = x_${i}`)}`,
  'names that are not defined': (n) => each(n, (i) => `y_${i} = ghost_${i}`),
  requirements: (n) => `x = 1 V\n${each(n, (i) => `shall x <= ${i} V because "of it"`)}`,
  functions: (n) => each(n, (i) => `f_${i}(a: A, b: V) = a * b * ${i}`),
  'calls of the library': (n) => each(n, (i) => `I_${i}: A = fla_3ph(${i} kW, 400 V, 90 %, 0.85)`),
  'a sum of many': (n) => `x = ${each(n, (i) => `${i} V`, ' + ')}`,
  'a list of many': (n) => `x = [${each(n, (i) => `${i} V`, ', ')}]`,
  'powers of powers': (n) => `x = 2${each(n, () => '^2', '')}`,
  'a unit of many': (n) => `x = 1 ${each(n, () => 'm', '*')}`,
  'open brackets': (n) => `x = ${'('.repeat(n)}`,
  'closed brackets': (n) => `x = 1${')'.repeat(n)}`,
  signs: (n) => `x = ${'-'.repeat(n)}1`,
  'open quotes': (n) => each(n, () => 'x = 1 A from plate "'),
  'escapes in a text': (n) => `x = 1 A from plate "${'\\"'.repeat(n)}`,
  digits: (n) => `x = ${'1'.repeat(n)}`,
  'a long name': (n) => `${'x'.repeat(n)} = 1`,
  'blanks at the end': (n) => `x = 1${' '.repeat(n)}\ny = 2`,
  'empty lines': (n) => '\n'.repeat(n),
  comments: (n) => each(n, (i) => `# the ${i}th`),
  'characters of no token': (n) => '§'.repeat(n),
  'line ends in brackets': (n) => `x = (1${'\n+ 1'.repeat(n)})`,
  'words without sense': (n) => each(n, () => 'because from shall ± within', ' '),
};

export const SHEETS: Shapes = {
  paragraphs: (n) => each(n, (i) => `Starter ${i} of the mill.`, '\n\n'),
  'lines of a paragraph': (n) => each(n, (i) => `and starter ${i}`),
  headings: (n) => each(n, (i) => `## Starter ${i}`),
  'headings of one text': (n) => each(n, () => '## Starter'),
  blocks: (n) => each(n, (i) => `\`\`\`ampwright\nx_${i} = 1 V\n\`\`\``, '\n\n'),
  'blocks with results': (n) =>
    each(n, (i) => `\`\`\`ampwright\nx_${i} = 1 V\n\`\`\`\n\n<!-- results -->\n> x_${i} = 1 V\n<!-- end results -->`, '\n\n'),
  'results that do not end': (n) => each(n, () => '<!-- results -->\n\ntext', '\n\n'),
  'a block that does not end': (n) => `\`\`\`ampwright\n${each(n, (i) => `x_${i} = 1 V`)}`,
  'values in one paragraph': (n) => each(n, (i) => `it takes [${i} A](#x_${i})`, ' '),
  'values in paragraphs': (n) => each(n, (i) => `it takes [${i} A](#x_${i})`, '\n\n'),
  captions: (n) => each(n, (i) => `Table t_${i} — Motors  from plate "x"\n\n| a |\n| --- |\n| 1 |`, '\n\n'),
  'captions without a table': (n) => each(n, (i) => `Table t_${i} — Motors`, '\n\n'),
  'links to CSV files': (n) => each(n, (i) => `Table t_${i} — [Motors](m.csv) from report "x"`, '\n\n'),
  quotes: (n) => each(n, (i) => `> ${i}`),
  lists: (n) => each(n, (i) => `- ${i}`),
  'fields of front matter': (n) => `---\nampwright: 1\n${each(n, (i) => `x-${i}: ${i}`)}\n---\n`,
  'lines of one field': (n) => `---\nampwright: 1\ntitle: |\n${each(n, (i) => `  line ${i}`)}\n---\n`,
  'front matter that does not end': (n) => `---\n${each(n, (i) => `x-${i}: ${i}`)}`,
  'carriage returns': (n) => '\r'.repeat(n),
  'marks of conflicts': (n) => each(n, () => '<<<<<<< a\nx\n=======\ny\n>>>>>>> b'),
};

const rows = (n: number, row: (i: number) => string) => `| type | P_n / kW |\n| --- | --: |\n${each(n, row)}\n`;

export const TABLES: Shapes = {
  rows: (n) => rows(n, (i) => `| M-${i} | ${i} ± 1 % |`),
  'rows of one name': (n) => rows(n, () => '| M | 1 |'),
  'rows in error': (n) => rows(n, () => '| M | 1,5 kW |'),
  'rows too short': (n) => rows(n, () => '| M |'),
  'rows too long': (n) => rows(n, () => '| M | 1 | 2 | 3 |'),
  escapes: (n) => rows(n, () => '| M\\|x | \\\\ |'),
  'a long cell': (n) => rows(1, () => `| ${'M '.repeat(n)} | 1 |`),
  'a long number': (n) => rows(1, () => `| M | ${'1 '.repeat(n)}x |`),
  'cells in a row': (n) => rows(1, () => `| ${'1 |'.repeat(n)}`),
};

export const CSV: Shapes = {
  rows: (n) => `type,P_n / kW\n${each(n, (i) => `M-${i},${i} ± 1 %`)}\n`,
  'rows in error': (n) => `type,P_n / kW\n${each(n, () => 'M,"1,5"')}\n`,
  'rows too short': (n) => `type,P_n / kW\n${each(n, () => 'M')}\n`,
  'rows too long': (n) => `type,P_n / kW\n${each(n, () => 'M,1,2,3')}\n`,
  'quotes in quotes': (n) => `type\n"${'""'.repeat(n)}"\n`,
  'quotes that do not end': (n) => `type\n${each(n, () => '"M')}\n`,
  'lines in a cell': (n) => `type\n"${each(n, () => 'M')}"\n`,
  'carriage returns': (n) => `type\r${each(n, () => 'M', '\r')}`,
  'empty lines': (n) => `type\n${'\n'.repeat(n)}`,
};

const block = (code: string) => `\`\`\`ampwright\n${code}\n\`\`\`\n`;
const motors = `Table t — Motors, invented  from plate "x"\n\n${rows(3, (i) => `| M-${i} | ${i} |`)}\n`;

/** Whole sheets; the first name of the first block can be renamed. */
export const CALCULATIONS: Shapes = {
  'a chain of entries': (n) => block(BLOCKS['a chain of entries']!(n)),
  'a chain of uncertain entries': (n) => block(`x_${FIRST} = 1 V ± 1 % from plate "x"\n${each(n, (i) => `x_${i + 1} = x_${i} + 1 V`)}`),
  'entries that read one': (n) => block(BLOCKS['entries that read one']!(n)),
  'one entry that reads all': (n) => block(BLOCKS['one entry that reads all']!(n)),
  'names that are not defined': (n) => block(`x = 1\n${BLOCKS['names that are not defined']!(n)}`),
  'a hundred signs each': (n) => block(each(n / 100, (i) => `x_${i} = ${'-'.repeat(100)}1`)),
  functions: (n) => block(BLOCKS['functions']!(n)),
  requirements: (n) => block(BLOCKS['requirements']!(n)),
  readings: (n) => block(`x = 1\n${each(n, (i) => `instrument M_${i} ± 1 %\nU_${i} = ${i} V by M_${i}`)}`),
  'computed columns': (n) => `${motors}${block(`x = 1\n${each(n, (i) => `t.c_${i} = x * P_n * ${i}`)}`)}`,
  blocks: (n) => each(n, (i) => block(`x_${i} = 1 V`)),
  tables: (n) => `${block('x = 1 V')}\n${each(n, (i) => `Table t_${i} — Motors  from plate "x"\n\n| a |\n| --- |\n| 1 |`, '\n\n')}\n`,
  paragraphs: (n) => `${block('x = 1 V')}\n${SHEETS['paragraphs']!(n)}\n`,
  'values in paragraphs': (n) => `${block('x = 1 V')}\n${each(n, (i) => `Starter ${i} takes [1 V](#x).`, '\n\n')}\n`,
  'values between blocks': (n) => each(n, (i) => `${block(`x_${i} = 1 V`)}\nIt is [1 V](#x_${i}).\n`),
};

const table = (text: string) => `Table t — Motors  from plate "x"\n\n${text}\n`;
const numbered = (n: number) => table(rows(n, (i) => `| M-${i} | ${i} |`));
const wide = (n: number) =>
  table(`| ${each(n, (i) => `c_${i} |`, ' ')}\n|${' --- |'.repeat(n)}\n| ${each(n, (i) => `${i} |`, ' ')}\n| ${'1 | '.repeat(n)}\n`);

/** Sheets without a calc block. */
export const PROSE: Shapes = {
  paragraphs: (n) => `${SHEETS['paragraphs']!(n)}\n`,
  'lines of a paragraph': (n) => `${each(n, (i) => `and Starter ${i}`)}\n`,
};

/** Sheets that are seen beside what they were, with the above. */
export const REVISED: Shapes = {
  'rows of a table': numbered,
  'columns of a table': wide,
  'rows of a computed column': (n) => `${numbered(n)}${block('t.c = 2 * P_n')}`,
  'rows of one name with a computed column': (n) => `${table(rows(n, (i) => `| M | ${i} |`))}${block('t.c = 2 * P_n')}`,
  'computed columns of a wide table': (n) => `${wide(n)}${block(each(n, (i) => `t.d_${i} = 2 * c_${i}`))}`,
  'tables with a computed column': (n) =>
    `${each(n, (i) => `Table t_${i} — Motors  from plate "x"\n\n| a |\n| --- |\n| 1 |`, '\n\n')}\n\n${block(each(n, (i) => `t_${i}.c = 2 * a`))}`,
  'requirements that read alike': (n) => block(each(n, (i) => `shall 1 V <= ${2 + (i % 2)} V because "${i}"`)),
  'a requirement for each row': (n) => `${numbered(n)}${block('shall P_n <= 5 kW for each t')}`,
  'a tabulation': (n) => block(`tabulate x * 2 over x from 0 to ${n} step 1`),
  actions: (n) => block(each(n, (i) => `action "Starter ${i}" by "R. Osei" due 2026-12-15`)),
  'lines of a paragraph': PROSE['lines of a paragraph']!,
  'values that stand for nothing': (n) => `${each(n, (i) => `Starter ${i} takes [1 V](#ghost_${i}).`, '\n\n')}\n`,
  'fields of front matter': SHEETS['fields of front matter']!,
  headings: SHEETS['headings']!,
};
