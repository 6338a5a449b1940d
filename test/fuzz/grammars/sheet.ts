// Sheets as a grammar: front matter, prose with values, tables, calc blocks with results; and the parts alone.
import type { Grammar } from '../grammar.ts';
import { NOTATION } from './notation.ts';

// biome-ignore format: alternatives side by side
export const FRONT_MATTER: Grammar = {
  yaml: ['{field}', '{field}\n{yaml}', '{field}\n{field}\n{yaml}'],
  field: [
    'ampwright: 1', 'title: {scalar}', 'number: {scalar}', 'revision: {scalar}', 'issued: {day}', 'owner: {scalar}', 'status: {scalar}', 'type: {scalar}', 'language: {scalar}',
    'codes: [{scalar}, {scalar}]', 'codes:\n  - {scalar}\n  - {scalar}', 'sources: required', 'sources: {scalar}', 'digits: {figures}', '{signatures}', '{key}: {yamlValue}', '{junk}', '# {plain}', '',
  ],
  key: ['x', 'titel', 'constructor', '__proto__', 'toString', '? a', '"quoted"', 'a b', '<<', '*a', '&a x', 'é', 'signatures', 'digits', '- x'],
  yamlValue: ['x', '{scalar}', '{flow}', '\n  {key}: {yamlValue}', '\n  - {yamlValue}', '&a {yamlValue}', '*a', '!!str {scalar}', '|\n  {plain}\n  {plain}', '>-\n  {plain}'],
  flow: ['[]', '{open}{close}', '[{scalar}, {flow}]', '{open}{key}: {flow}{close}', '[*a, *a, *a]', '[[[[{flow}]]]]'],
  open: ['{'],
  close: ['}'],
  scalar: ['x', '{plain}', '"{plain}"', "'{plain}'", '"a\\n\\u0041"', '~', 'null', 'true', '1.0', '0x1F', '2026-11-20', '"unclosed', "it's", 'a: b', '@x', '%x', '`x`', ''],
  plain: ['Starter for M-12', 'R. Osei', 'Ω µ é 🙂', '<script>alert(1)</script>', 'a # b', '1', '- a', 'x\ty'],
  day: ['2026-11-20', '2026-2-30', '2026-02-30', 'today', '"2026-11-20"'],
  figures: ['4', '0', '15', '16', '-1', '4.5', '1e9', '99999999999', 'four'],
  signatures: [
    'signatures: []', 'signatures:\n{entry}', 'signatures:\n{entry}\n{entry}', 'signatures: {flow}', 'signatures:\n  - role: prepared\n    name: {scalar}\n    date: {day}\n    covers: {covers}',
    'signatures: {open}role: {scalar}, name: {scalar}{close}',
  ],
  entry: ['  - role: checked', '  - role: {scalar}\n    name: {scalar}\n    date: {day}\n    covers: {covers}\n    version: {scalar}', '  - {open}role: {scalar}, name: {scalar}, date: {day}, covers: "{covers}"{close}', '  - {scalar}', '- role: {scalar}\n  {key}: {yamlValue}'],
  covers: ['sha256:…', 'sha256:0000000000000000000000000000000000000000000000000000000000000000', 'sha256:xyz', 'md5:1'],
  junk: ['junk', ': x', '\tx: y', '- - -', '"', '[', '{open}', '%YAML 1.2', '...', '--- x', '}}', 'a: b: c', '&a', '*a', '!<tag> x'],
};

// biome-ignore format: alternatives side by side
export const TABLE: Grammar = {
  table: ['{head}\n{rule}\n{rows}'],
  head: ['| type | I / A |', '| {title} | {title} |', '| {title} | {title} | {title} |', '{title} | {title}', '| {title} |', '|{title}|{title}'],
  rule: ['| --- | --- |', '| --- | --: |', '| --- | --: | :-: |', '|-|-|', '| :-- |', '--- | ---', '| --- | x |'],
  rows: ['{row}', '{row}\n{rows}', '{row}\n{row}\n{rows}'],
  row: ['| K1 | 1 |', '| {cell} | {cell} |', '| {cell} | {cell} | {cell} |', '{cell} | {cell}', '|{cell}|', '', '|', '| {cell} | {cell} | {cell} | {cell} |'],
  title: ['type', 'I / A', 'U_s / V', 'f/Hz', 'seen / date', 'n / 1', 'alpha / (1/K)', 'T / degC', 'eta / %', 'two words', 'x / kw', 'I / A/m/s', '', '1', 'constructor', '__proto__', 'row', 'I \\| A', '`x`', 'x /', '/ A'],
  cell: [
    'K1', '{cellNumber}', '{cellNumber} ± {cellNumber}', '{cellNumber} ± 2 %', '–', '', '2026-11-20', '2026-2-3', '1,5', '12 000', '40 A', '<b>x</b>', '[x](#I_n)', 'a\\|b', '`a|b`', '=1+1', '-5', '−5', '+5',
    '@x', '±', '1 ±', '± 2', '1e400', 'x'
  ],
  cellNumber: ['1', '0', '31.5', '-2.5', '1e-3', '0.30', '007', '.5', '5.', '1e308'],
};

// biome-ignore format: alternatives side by side
export const CSV: Grammar = {
  csv: ['{head}{end}{rows}', '\ufeff{head}{end}{rows}', '{rows}', ''],
  head: ['type,I / A', '{title},{title}', '{title},{title},{title}', '{title};{title}', '{title}\t{title}', '"{title}","{title}"'],
  title: TABLE['title']!,
  rows: ['{row}', '{row}{end}{rows}', '{row}{end}{row}{end}{rows}'],
  row: ['a,1', '{field},{field}', '{field},{field},{field}', '{field}', '', ',', '{field};{field}'],
  field: ['x', '{cell}', '{cell}', '"{cell}"', '"{cell},{cell}"', '"a ""b"" c"', '"a\nb"', ' "x" ', 'a"b', '"a" b', '"', '""', '"unclosed'],
  cell: TABLE['cell']!,
  cellNumber: TABLE['cellNumber']!,
  end: ['\n', '\r\n', '\r', '\n\n', '\n'],
};

// biome-ignore format: alternatives side by side
export const SHEET: Grammar = {
  ...FRONT_MATTER, ...TABLE, ...NOTATION,
  sheet: ['---\n{yaml}\n---\n\n{body}', '{body}', '\ufeff---\n{yaml}\n---\n{body}', '---\n{yaml}\n{body}', '{conflict}\n{body}'],
  body: ['{part}', '{part}\n\n{body}', '{part}\n\n{part}\n\n{body}', '{part}\n{body}'],
  part: [
    '{prose}', '{fence}', '{fence}', '{fence}\n\n{results}', '{caption}\n\n{table}', '{caption}\n\n{table}', 'Table motors — Motors from plate "x"\n\n| type | P_n / kW | seen / date |\n| --- | --: | --- |\n| M-12 | 18.5 ± 1 % | 2026-10-02 |\n| M-20 | 4 | – |',
    'Table contactors — Range\n\n| type | I_AC3 / A | U_s / V |\n| --- | --: | --: |\n| K4 | 31.5 | 110 |\n| K5 | 40 | 110 |', '{caption}', '{results}', '{conflict}', '{html}', '# {plain}', '{plain}\n===', '---',
  ],
  fence: ['```ampwright\n{block}\n```', '```ampwright\n{block}\n```', '~~~ampwright\n{block}\n~~~', '````ampwright\n{block}\n````', '```ampwright\n{block}', '```js\n{block}\n```', '  ```ampwright\n{block}\n```', '> ```ampwright\n> {line}\n> ```', '- ```ampwright\n  {line}\n  ```', '```Ampwright\n{line}\n```', '```ampwright\n```'],
  results: ['<!-- results -->\n| result | value | note |\n| :-- | --: | :-- |\n| a | 1 V | |\n<!-- end results -->', '<!-- results -->', '<!-- end results -->', '<!-- results -->\n| result | value | note |\n| :-- | --: | :-- |\n{row}\n<!-- end results -->', '<!--results-->\n{rows}\n<!--  end results -->'],
  caption: ['Table motors — Motors', 'Table {name} — {plain}', 'Table {name} – {plain} from plate {text}', 'Table {name} - [Motors](motors.csv)', 'Table {name} — [{plain}]({path}) from report {text}', 'Table 3 — {plain}', 'Table {name} -- x from plaet "x"'],
  path: ['motors.csv', '../../etc/passwd', '/etc/passwd.csv', 'a b.csv', 'javascript:x.csv', '%2e%2e/x.csv', 'x.CSV'],
  prose: ['{words}', '{words}\n{words}', '- {words}\n  - {words}', '> {words}', '1. {words}\n\n   {words}', '| {words} |', '    {words}', '[ref]: #a', '[ref]: javascript:x "{plain}"'],
  words: ['text', '{inline}', '{inline} {words}', '{inline}{words}'],
  inline: ['The motor', '[34.40 A](#{name})', '[{plain}](#K.{column})', '**[1](#a)**', '`[1](#a)`', '![x](#a)', '[x](javascript:alert(1))', '[x][ref]', '<a href="x">', '<https://example.org>', '*_`', '\\[1](#a)', '[*1 ± 2*](#a)', '&lt;', '[a](#%61)', '[a](#%zz)', '~~x~~', '{plain}', '🙂', 'a\\\nb'],
  html: ['<!-- {plain} -->', '<script>\n{plain}\n</script>', '<div>\n{part}\n</div>', '<details>', '<!--', '-->', '<?php', '<![CDATA[', '<style>x'],
  conflict: ['<<<<<<< HEAD\n{line}\n=======\n{line}\n>>>>>>> theirs', '<<<<<<< HEAD', '=======', '>>>>>>> x', '||||||| base\n{line}'],
};
