// One line of the bench's table.

export interface BenchRow {
  readonly what: string;
  /** What is aimed at; '' where the figure is only told. */
  readonly aim: string;
  readonly found: string;
  readonly holds: boolean;
}

export const HEAD = ['| what | how | aim | found |', '| :-- | :-- | :-- | :-- |'];

export function tableLine({ what, aim, found, holds }: BenchRow, how: string): string {
  return `| ${what} | ${how} | ${aim} | ${found}${holds ? '' : ', **missed**'} |`;
}
