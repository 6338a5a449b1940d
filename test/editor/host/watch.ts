// Watching elements of the page from one moment to another: whether they are still the same ones, were changed inside, or moved.
import type { Locator } from 'playwright-core';
import type { Watched } from './protocol.ts';

/** Begins to watch what matches at this moment, until `watched` is asked. */
export function watch(elements: readonly Locator[]): Promise<unknown> {
  return Promise.all(elements.map((element) => element.evaluate(begin)));
}

/** What has become of the elements since, without those that have come. */
export async function watched(elements: readonly Locator[]): Promise<Watched[]> {
  const found = await Promise.all(elements.map((element) => element.evaluate(end)));
  return found.filter((one) => one !== null);
}

// What follows runs in the page, where a function with a name of its own would ask for the helpers of the tool that strips its types.

interface WatchedNode extends Element {
  watch?: { changes: number; readonly tops: number[]; readonly observer: MutationObserver; readonly timer: number };
}

function begin(node: WatchedNode): void {
  const tops = [Math.round(node.getBoundingClientRect().top)];
  const observer = new MutationObserver((records) => {
    node.watch!.changes += records.length;
  });
  observer.observe(node, { subtree: true, childList: true, characterData: true, attributes: true });
  const timer = window.setInterval(() => {
    const top = Math.round(node.getBoundingClientRect().top);
    if (top !== tops.at(-1)) tops.push(top);
  }, 10);
  node.watch = { changes: 0, tops, observer, timer };
}

function end(node: WatchedNode): Watched | null {
  if (!node.watch) return null;
  const { changes, tops, observer, timer } = node.watch;
  observer.disconnect();
  clearInterval(timer);
  delete node.watch;
  return { changes, tops };
}
