// Random texts that look like sheets.
import fc from 'fast-check';

const lines = [
  '', '', ' ', 'Text.', '# Heading', 'Title', '===', '---', '---', '- item', '  more', '> quote', '```', '```ampwright', '```ampwright',
  '````', '~~~ampwright', '~~~', '  ```ampwright', 'x = 1 A', 'I_n: A = 2 * x', '<!-- results -->', '<!-- end results -->', '<!--', '-->',
  '| result | value | note |', '| :-- | --: | :-- |', '| x | 1 A | |', '| --- | --: |', '| type | I / A |', '| K\\|1 | 40 ± 1 % |',
  'Table contactors — Range from datasheet "x"', 'Table motors — [Motors](motors.csv)', 'Table t - T', 'title: T', 'digits: 5', 'signatures:',
  '  - role: prepared', '    name: R. Osei', '- role: x', 'digits: [', 'é µ Ω 🙂', '[34.40 A](#x)', '`[1](#x)`', '[a]: #x', '<<<<<<< HEAD', '=======',
  '>>>>>>> theirs', '\ufeff', '\0', '    indented', '\\', '| a', '<b>', '[40 A](#K.I_AC3) and [2 ± 1](#x)',
]; // biome-ignore format: a word list

/** Lines of sheets in any order, with any line ends. */
export const markdownish = fc
  .tuple(
    fc.array(fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...lines) }, { weight: 1, arbitrary: fc.string() }), { maxLength: 25 }),
    fc.constantFrom(['\n'], ['\r\n'], ['\r'], ['\n', '\r\n', '\r']),
    fc.boolean(),
  )
  .map(([parts, ends, bom]) => (bom ? '\ufeff' : '') + parts.map((part, i) => part + ends[i % ends.length]).join(''));
