// The editor's answers at any place of any sheet: hover, completion, definitions, uses, renaming, forms of calls, outline, folds.
import { completions } from '../../../src/assist/completion.ts';
import { definition } from '../../../src/assist/definition.ts';
import { folds } from '../../../src/assist/folding.ts';
import { hover } from '../../../src/assist/hover.ts';
import { block, contentOf, SHEET as FILE, spotInFile } from '../../../src/assist/location.ts';
import { highlights, references } from '../../../src/assist/references.ts';
import { rename } from '../../../src/assist/rename.ts';
import { semanticTokens } from '../../../src/assist/semantic-tokens.ts';
import { signatureHelp } from '../../../src/assist/signature-help.ts';
import { symbols } from '../../../src/assist/symbols.ts';
import { openSheet } from '../../../src/run/open-sheet.ts';
import { calcCells } from '../../../src/sheet/sheet.ts';
import { maker, wordsOf } from '../grammar.ts';
import { SHEET } from '../grammars/sheet.ts';
import { checkPlace, type Target } from '../target.ts';

export const writingHelp: Target = {
  name: 'writing-help',
  make: maker(SHEET, 'sheet'),
  words: wordsOf(SHEET),
  check(text, random) {
    const open = openSheet(text, { read: () => ({ refused: 'there is no such file' }) });
    const cells = calcCells(open.loaded.sheet);
    for (const id of [FILE, ...cells.map((cell) => block(cell.number))]) {
      const content = contentOf(open, id) ?? '';
      for (const { at } of semanticTokens(open, id)) checkPlace(at, content, 'token');
      symbols(open, id);
      folds(open, id);
    }
    const cell = cells.length > 0 && random.chance(80) ? random.of(cells) : null;
    const offset = cell ? cell.code.start + random.below(cell.text.length + 1) : random.below(text.length + 1);
    const spot = spotInFile(open.loaded.sheet, offset);
    completions(open, spot, ['motors.csv']);
    hover(open, spot);
    signatureHelp(open, spot);
    definition(open, spot);
    highlights(open, spot);
    for (const { text: id, at } of references(open, spot, true)) checkPlace(at, contentOf(open, id) ?? '', 'use');
    rename(open, spot, random.of(['a', 'new_name', 'K', '', 'if', '1', 'x y', '__proto__', 'η']));
  },
};
