// Waiting for something to become true, for tests inside the editor.

/** Asks again and again until the answer is neither `undefined` nor `false`; gives up, saying what never came. */
export async function waitFor<T>(
  what: string,
  ask: () => T | undefined | false | PromiseLike<T | undefined | false>,
  limit = 10_000,
): Promise<T> {
  const end = Date.now() + limit;
  for (;;) {
    const answer = await ask();
    if (answer !== undefined && answer !== false) return answer;
    if (Date.now() > end) throw new Error(`${what} did not happen within ${limit / 1000} s.`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
