// What a result may ask of the editor: to go to where a name is defined. Another renderer, too, may send something, so it is read first.
import * as z from 'zod/mini';

const REVEAL = z.strictObject({ type: z.literal('reveal'), name: z.string().check(z.minLength(1), z.maxLength(400)) });

export type Reveal = Readonly<z.infer<typeof REVEAL>>;

/** The name that is asked for; null where the message is not one that results send. */
export function nameToReveal(message: unknown): string | null {
  const read = REVEAL.safeParse(message);
  return read.success ? read.data.name : null;
}
