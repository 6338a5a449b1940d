// Tables in CSV files: the same as pipe tables, with the places in the file.
import { readCsvTable } from '../../../src/sheet/csv.ts';
import { readSheet } from '../../../src/sheet/read-sheet.ts';
import { maker, wordsOf } from '../grammar.ts';
import { CSV } from '../grammars/sheet.ts';
import { checkProblems, type Target } from '../target.ts';
import { checkTable } from './tables.ts';

const caption = readSheet('Table motors — [Motors](motors.csv) from report "survey"\n').csvTables[0]!;

export const csv: Target = {
  name: 'csv',
  make: maker(CSV, 'csv'),
  words: wordsOf(CSV),
  check(text) {
    const { table, problems } = readCsvTable(text, caption);
    checkTable(table, text);
    checkProblems(problems, text);
  },
};
