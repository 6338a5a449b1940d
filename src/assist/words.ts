// The words of the notation: the form in which each stands and what it says, in one line. In the order in which they are offered.

export interface Word {
  readonly word: string;
  readonly form: string;
  readonly meaning: string;
}

export const WORDS: readonly Word[] = [
  { word: 'shall', form: 'shall a <= b', meaning: 'an acceptance criterion: it holds, fails, or is undecided within the uncertainty' },
  { word: 'should', form: 'should a <= b', meaning: 'a recommendation, decided like `shall`' },
  { word: 'curve', form: 'curve f(x): unit over x from a to b', meaning: 'a drawing; `mark` and `limit` stand on indented lines below' },
  { word: 'tabulate', form: 'tabulate f(x): unit over x from a to b step s', meaning: 'a small table of values' },
  { word: 'instrument', form: 'instrument NAME ± (1.5 % + 0.5 mV) serial "…" due 2027-03-01', meaning: 'a meter with its limits, for readings `by NAME`' },
  { word: 'action', form: 'action "…" by "…" due 2026-12-15', meaning: 'something to be done; it goes into the register of actions' },
  { word: 'use', form: 'use "other.ampwright.md" for a, b', meaning: 'takes entries, functions and tables from another sheet' },
  { word: 'from', form: 'from plate "…"', meaning: 'where a value or a formula comes from; behind `over x`, where the range begins' },
  { word: 'because', form: 'because "…"', meaning: 'the reason for a requirement, a choice or an assumption' },
  { word: 'with', form: 'with a = …, b = …', meaning: 'names for this one statement' },
  { word: 'needs', form: 'needs x > 0 because "…"', meaning: 'what the arguments of a function must satisfy' },
  { word: 'by', form: 'by NAME on 2026-10-02', meaning: 'the instrument that a reading was taken with' },
  { word: 'on', form: 'on 2026-10-02', meaning: 'the day of a reading' },
  { word: 'readings', form: 'readings [12.1 mV, 12.4 mV]', meaning: 'repeated readings: their mean, with its uncertainty from their spread' },
  { word: 'within', form: 'within 91.3 % to 92.4 %', meaning: 'the limits of an input, where they are uneven' },
  { word: 'least', form: 'least column of table where …', meaning: 'the row with the least value of the column among those that fit' },
  { word: 'greatest', form: 'greatest column of table where …', meaning: 'the row with the greatest value of the column among those that fit' },
  { word: 'first', form: 'first of table where …', meaning: 'the first row that fits, in the order of the table' },
  { word: 'the', form: 'the column of table where …', meaning: 'the value in the one row that fits' },
  { word: 'of', form: 'least column of table', meaning: 'says which table is meant' },
  { word: 'where', form: 'where a >= b and c is "…"', meaning: 'the condition on a row; columns are read by their names' },
  { word: 'row', form: 'row.column', meaning: 'the row that a condition or a computed column looks at' },
  { word: 'root', form: 'root of f(x) over x from a to b', meaning: 'where the expression is zero between the ends' },
  { word: 'over', form: 'over x from a to b', meaning: 'the variable and its range' },
  { word: 'to', form: 'from a to b', meaning: 'where a range ends' },
  { word: 'step', form: 'step s', meaning: 'the distance between the rows of a tabulation' },
  { word: 'log', form: 'over x from a to b log', meaning: 'the axis of the variable is logarithmic' },
  { word: 'mark', form: 'mark x "label"', meaning: 'a marked point of a curve' },
  { word: 'limit', form: 'limit y "label"', meaning: 'a limit line of a curve' },
  { word: 'for', form: 'for each table where …', meaning: 'the requirement holds for every row; behind `use`, which names are taken' },
  { word: 'each', form: 'for each table where …', meaning: 'the requirement holds for every row' },
  { word: 'throughout', form: 'throughout x from a to b', meaning: 'the requirement is met at every point of a range of operation; the worst is shown' },
  { word: 'accepted', form: 'accepted by "role, name" until 2027-03-31 because "…"', meaning: 'a concession, shown beside the status' },
  { word: 'until', form: 'until 2027-03-31', meaning: 'the day on which a concession runs out' },
  { word: 'serial', form: 'serial "…"', meaning: "an instrument's number" },
  { word: 'calibrated', form: 'calibrated 2026-03-01', meaning: 'the day of the last calibration' },
  { word: 'due', form: 'due 2027-03-01', meaning: 'the day of the next calibration, or the day by which an action is to be done' },
  { word: 'if', form: 'if … then … else …', meaning: 'the first value where the condition holds, the second where not' },
  { word: 'then', form: 'if … then … else …', meaning: 'the value where the condition holds' },
  { word: 'else', form: 'if … then … else …', meaning: 'the value where the condition does not hold' },
  { word: 'and', form: 'a and b', meaning: 'holds where both hold' },
  { word: 'or', form: 'a or b', meaning: 'holds where one of them holds' },
  { word: 'not', form: 'not a', meaning: 'holds where the condition does not' },
  { word: 'is', form: 'a is b, a is not b', meaning: 'whether two values are equal, texts too' },
  { word: 'yes', form: 'yes', meaning: 'the value of a condition that holds' },
  { word: 'no', form: 'no', meaning: 'the value of a condition that does not hold' },
]; // biome-ignore format: a table

const byWord = new Map(WORDS.map((word) => [word.word, word]));

export function wordNamed(word: string): Word | undefined {
  return byWord.get(word);
}
