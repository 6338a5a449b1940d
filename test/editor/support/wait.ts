// Waiting for something to become true, for tests inside the editor.

/** Milliseconds; a busy machine needs some, and what works waits for none of them. */
const patience = 20_000;

/** Asks again and again until the answer is neither `undefined` nor `false`; gives up, saying what never came and `instead` of it. */
export async function waitFor<T>(
  what: string,
  ask: () => T | undefined | false | PromiseLike<T | undefined | false>,
  instead: () => string = () => '',
): Promise<T> {
  const end = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (answer !== undefined && answer !== false) return answer;
    if (Date.now() > end) throw new Error(`${what}: this did not happen within ${patience / 1000} s. ${instead()}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
