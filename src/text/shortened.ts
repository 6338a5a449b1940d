// Quoting in moderation: a sheet may hold a line of a megabyte, and no message repeats it.

/** Longest text that a message quotes, in UTF-16 code units: longer than any form of a function. */
const LONGEST_QUOTE = 120;

/** Longest message, in UTF-16 code units. */
const LONGEST_MESSAGE = 1000;

/** A text of at most `most` code units: a longer one keeps its beginning and its end, with `…` between. Characters stay whole. */
export function shortened(text: string, most: number = LONGEST_QUOTE): string {
  if (text.length <= most) return text;
  const end = Math.floor((most - 1) / 3);
  const start = most - 1 - end;
  return `${text.slice(0, start).replace(/[\ud800-\udbff]$/, '')}…${text.slice(text.length - end).replace(/^[\udc00-\udfff]/, '')}`;
}

/** A message in which each text between backticks, and the whole, is no longer than a person reads. */
export function shortenedMessage(message: string): string {
  if (message.length <= LONGEST_QUOTE) return message;
  return shortened(
    message.replace(/`[^`]+`/g, (quote) => `\`${shortened(quote.slice(1, -1))}\``),
    LONGEST_MESSAGE,
  );
}
