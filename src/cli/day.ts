// Days on the command line, in days since 1970-01-01.
import { InvalidArgumentError } from 'commander';
import { daysOf } from '../text/date.ts';

/** The day written as `2026-12-01`. */
export function parseDay(text: string): number {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)?.map(Number) ?? [];
  const days = year === undefined ? null : daysOf(year, month!, day!);
  if (days === null) throw new InvalidArgumentError('Write a day of the calendar as 2026-12-01.');
  return days;
}

/** Today where this machine stands. */
export function today(): number {
  const now = new Date();
  return daysOf(now.getFullYear(), now.getMonth() + 1, now.getDate())!;
}
