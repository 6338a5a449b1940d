// Waiting for something to become true, for tests inside the editor.

/** Asks again and again until the answer is neither `undefined` nor `false`; gives up, saying what never came and `instead` of it. */
export async function waitFor<T>(
  what: string,
  ask: () => T | undefined | false | PromiseLike<T | undefined | false>,
  instead: () => string = () => '',
): Promise<T> {
  const end = Date.now() + 10_000;
  for (;;) {
    const answer = await ask();
    if (answer !== undefined && answer !== false) return answer;
    if (Date.now() > end) throw new Error(`${what}: this did not happen within 10 s. ${instead()}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
