// How long a user waits from a key until the results that it changes are painted.
import type { Frame, Page } from 'playwright-core';

interface Edits {
  /** Pressed in turn; each must change what the outputs say. */
  readonly keys: readonly string[];
  readonly times: number;
}

/** Milliseconds of each edit, by the clock of the browser, which both frames share. */
export async function timeEdits(page: Page, outputs: Frame, { keys, times }: Edits): Promise<number[]> {
  const found: number[] = [];
  for (let i = 0; i < times; i++) {
    const pressed = page.evaluateHandle(whenPressed);
    const painted = outputs.evaluateHandle(whenPainted);
    const [press, paint] = [await pressed, await painted];
    await page.keyboard.press(keys[i % keys.length]!);
    const [from, to] = await Promise.all([press.evaluate(({ time }) => time), paint.evaluate(({ time }) => time)]);
    found.push(to - from);
    // No one types on the very moment of a result.
    await page.waitForTimeout(100);
  }
  return found;
}

// What follows runs in the page, where a function with a name of its own would ask for the helpers of the tool that strips its types.

function whenPressed(): { readonly time: Promise<number> } {
  const time = new Promise<number>((resolve) => {
    window.addEventListener('keydown', (event) => resolve(performance.timeOrigin + event.timeStamp), { capture: true, once: true });
  });
  return { time };
}

function whenPainted(): { readonly time: Promise<number> } {
  // Outputs out of view may follow later, those of an edit before too.
  const inView = {
    text() {
      const places = [...document.querySelectorAll('.output_container')].map((output) => [output, output.getBoundingClientRect()] as const);
      return places.flatMap(([output, { top, bottom }]) => (top < innerHeight && bottom > 0 ? [output.textContent] : [])).join();
    },
  };
  const before = inView.text();
  const time = new Promise<number>((resolve, reject) => {
    const late = setTimeout(() => reject(new Error('An edit changed no result within 10 s.')), 10_000);
    new MutationObserver((_, observer) => {
      if (inView.text() === before) return;
      observer.disconnect();
      clearTimeout(late);
      // A task that is asked for in the last moment before a frame is painted comes behind it.
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.timeOrigin + performance.now());
        port2.postMessage(null);
      });
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  return { time };
}
