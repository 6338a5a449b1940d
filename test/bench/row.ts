// One line of the bench's table.

export interface BenchRow {
  readonly what: string;
  readonly aim: string;
  readonly found: string;
  readonly holds: boolean;
}
