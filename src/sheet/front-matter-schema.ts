// What each field of the front matter may hold. Every message continues a sentence that begins with the field's name.
import * as z from 'zod/mini';
import { daysOf } from '../text/date.ts';

// Nothing in the core makes code from text, zod's fast path included.
z.config({ jitless: true });

const line = (text: string) => text.replace(/\s+/g, ' ').trim();
const text = z.pipe(z.string({ error: 'wants a text' }), z.transform(line));

const day = z
  .string({ error: 'wants a day, written as 2026-11-20' })
  .check(z.refine(isDay, { error: 'wants a day of the calendar, written as 2026-11-20' }));

function isDay(written: string): boolean {
  const [year, month, date] = /^\d{4}-\d{2}-\d{2}$/.test(written) ? written.split('-').map(Number) : [];
  return year !== undefined && daysOf(year, month!, date!) !== null;
}

const whole = (from: number, to: number, error: string) =>
  z.pipe(
    z
      .string({ error })
      .check(z.refine((written) => /^\d{1,9}$/.test(written) && Number(written) >= from && Number(written) <= to, { error })),
    z.transform(Number),
  );

const filled = (error: string) => z.pipe(z.string({ error }), z.transform(line)).check(z.refine((written) => written !== '', { error }));

/** One entry of `signatures`. */
export const SIGNATURE = z.object(
  {
    role: filled('wants the role, such as prepared, checked or approved'),
    name: filled('wants the name of who signs'),
    date: day,
    covers: z.string({ error: 'wants the digest that the signature covers' }).check(
      z.regex(/^sha256:(?:[0-9a-f]{64}|…|\.\.\.)$/, {
        error: 'wants `sha256:` and 64 hexadecimal digits, as `ampwright sign` writes them',
      }),
    ),
    version: z.optional(text),
  },
  { error: 'wants entries with role, name, date and covers' },
);

/** The version of the file format that this version reads. */
export const FORMAT = 1;

/** The fields, under the names that the front matter has them by. */
export const FIELDS = {
  ampwright: whole(1, FORMAT, `is the version of the file format; this version of Ampwright reads ${FORMAT}`),
  title: text,
  number: text,
  revision: text,
  issued: day,
  owner: text,
  status: text,
  type: text,
  department: text,
  reference: text,
  language: text,
  codes: z.union(
    [
      z.pipe(
        text,
        z.transform((code: string) => [code]),
      ),
      z.array(text),
    ],
    { error: 'wants a list of texts, such as `[IEC 60947-4-1:2018]`' },
  ),
  sources: z.enum(['required', 'optional'], { error: 'is `required` or `optional`' }),
  digits: whole(1, 15, 'wants the number of significant digits, from 1 to 15'),
  signatures: z.array(SIGNATURE, { error: 'wants a list of entries with role, name, date and covers' }),
} as const;

export type Field = keyof typeof FIELDS;
export const FIELD_NAMES = Object.keys(FIELDS) as readonly Field[];
export const SIGNATURE_KEYS = ['role', 'name', 'date', 'covers', 'version'] as const;
