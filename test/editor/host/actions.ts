// What a user does at the screen, carried out by Playwright on the page that shows the editor.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { Frame, Locator, Page, Request } from 'playwright-core';
import type { AccessibilityFault, Action, Focused, Target } from './protocol.ts';
import { timeEdits } from './time-edits.ts';
import { watch, watched } from './watch.ts';

const patience = 20_000;
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What frames of outputs have asked the server for and not got yet, and since when. */
type Requests = ReadonlyMap<Request, number>;

/** What the user sits at. */
export interface Screen {
  readonly page: Page;
  /** The folder for pictures. */
  readonly artifacts: string;
  readonly requests: Requests;
}

/** Does one action and returns what the user then knows. Throws what went wrong, in words for the test's report. */
export function act({ page, artifacts, requests }: Screen, action: Action): Promise<unknown> {
  switch (action.do) {
    case 'press':
      return page.keyboard.press(action.keys);
    case 'type':
      return page.keyboard.type(action.text);
    case 'time edits':
      return outputsInView(page).then((outputs) => timeEdits(page, outputs, action));
    case 'click':
      return atRest(page, action.target).then((element) => element.click({ timeout: patience }));
    case 'hover':
      return atRest(page, action.target).then((element) => element.hover({ timeout: patience }));
    case 'see':
      return found(page, action.target).then(() => undefined);
    case 'have':
      return present(page, action.target);
    case 'miss':
      return gone(page, action.target);
    case 'read':
      return found(page, action.target).then(shownText);
    case 'markup':
      return found(page, action.target).then((element) => element.evaluate((node) => node.outerHTML));
    case 'texts':
      return visible(page, action.target).then((elements) => Promise.all(elements.map(shownText)));
    case 'watch':
      return visible(page, action.target).then(watch);
    case 'watched':
      return visible(page, action.target).then(watched);
    case 'focused':
      return focused(page);
    case 'settle':
      return settle(requests);
    case 'check accessibility':
      return accessibility(page, action.target);
    case 'resize':
      return page.setViewportSize({ width: action.width, height: action.height });
    case 'screenshot':
      return page.screenshot({ path: path.join(artifacts, `${action.name}.png`), animations: 'disabled' }).then(() => undefined);
    case 'print':
      return Promise.resolve(console.log(...action.values));
  }
}

/** The frames of a place: the page itself, or the notebook outputs of the editors now in view. */
async function frames(page: Page, place: Target['in']): Promise<Frame[]> {
  if (place === 'workbench') return [page.mainFrame()];
  const shown = await Promise.all(page.frames().map(async (frame) => (await inView(page, frame)) && frame));
  return shown.filter((frame) => frame !== false);
}

async function outputsInView(page: Page): Promise<Frame> {
  const [outputs] = await frames(page, 'outputs');
  if (!outputs) throw new Error('No notebook outputs are in view.');
  return outputs;
}

/** A webview is a frame in a frame; the editor hides the outer one when another editor is in front. */
async function inView(page: Page, frame: Frame): Promise<boolean> {
  const outer = frame.parentFrame();
  if (!outer || outer.parentFrame() !== page.mainFrame()) return false;
  try {
    return await (await outer.frameElement()).isVisible();
  } catch {
    return false; // the frame went away while we asked
  }
}

/** All matches at this moment, visible or not. */
async function matching(page: Page, target: Target): Promise<Locator[]> {
  const matches: Locator[] = [];
  for (const frame of await frames(page, target.in)) {
    try {
      matches.push(...(await frame.locator(target.selector).all()));
    } catch (error) {
      if (!frame.isDetached()) throw error;
    }
  }
  return matches;
}

async function visible(page: Page, target: Target): Promise<Locator[]> {
  const matches = await matching(page, target);
  const seen = await Promise.all(matches.map((element) => element.isVisible()));
  return matches.filter((_, i) => seen[i]);
}

async function found(page: Page, target: Target): Promise<Locator> {
  const first = await settled(async () => (await visible(page, target))[0]);
  return first ?? nothing(page, 'visible matches', target);
}

/** What is found once it stays where it is: results that come, and widgets that open, push others away from under the mouse. */
async function atRest(page: Page, target: Target): Promise<Locator> {
  const element = await found(page, target);
  let before = '';
  let calm = 0;
  await settled(async () => {
    const now = JSON.stringify(await element.boundingBox());
    calm = now === before ? calm + 1 : 0;
    before = now;
    return calm >= 4 || undefined;
  });
  return element;
}

async function present(page: Page, target: Target): Promise<void> {
  const first = await settled(async () => (await matching(page, target))[0]);
  if (!first) await nothing(page, 'matches', target);
}

async function gone(page: Page, target: Target): Promise<void> {
  const absent = await settled(async () => (await visible(page, target)).length === 0 || undefined);
  if (!absent) throw new Error(`${target.selector} is still visible in the ${target.in}.`);
}

async function nothing(page: Page, matches: string, target: Target): Promise<never> {
  const there = await Promise.all((await frames(page, target.in)).map((frame) => frame.locator('body').innerText()));
  throw new Error(`Nothing ${matches} ${target.selector} in the ${target.in}. There is:\n${there.join('\n---\n').slice(0, 4000)}`);
}

/** Asks until there is an answer or the user's patience ends. */
async function settled<T>(ask: () => Promise<T | undefined>): Promise<T | undefined> {
  const end = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (answer !== undefined || Date.now() > end) return answer;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** The text as it is laid out; formulas have no layout text of their own. No-break spaces count as spaces. */
async function shownText(element: Locator): Promise<string> {
  const text = await element.evaluate((node) => (node instanceof HTMLElement ? node.innerText : node.textContent));
  return (text ?? '').replace(/[\u00A0\u202F]/g, ' ');
}

/** Waits until the frames of outputs have all that they asked for, and ask for no more in a while. */
async function settle(requests: Requests): Promise<void> {
  let calm = 0;
  const enough = 4;
  await settled(async () => {
    calm = awaited(requests).length === 0 ? calm + 1 : 0;
    return calm > enough || undefined;
  });
  const left = awaited(requests).map((request) => request.url());
  if (calm <= enough) throw new Error(`The page is still waiting for ${left.join(', ')}.`);
}

/** Of a frame that is taken away while it loads nobody is told how its request ended; this machine's own server answers sooner. */
function awaited(requests: Requests): Request[] {
  return [...requests].flatMap(([request, since]) => (Date.now() - since < patience / 2 ? [request] : []));
}

async function focused(page: Page): Promise<Focused> {
  for (const frame of await frames(page, 'outputs')) {
    const inside = await frame.evaluate(describeFocus);
    if (inside) return { place: 'outputs', ...inside };
  }
  return { place: 'workbench', ...(await page.evaluate(describeFocus))! };
}

function describeFocus(): Omit<Focused, 'place'> | undefined {
  const element = document.activeElement;
  if (!document.hasFocus() || !element || element === document.body) return undefined;
  const label = element.getAttribute('aria-label') ?? (element as HTMLElement).innerText ?? '';
  return { tag: element.tagName.toLowerCase(), role: element.getAttribute('role'), label: label.replace(/[\u00A0\u202F]/g, ' ').trim() };
}

async function accessibility(page: Page, target: Target): Promise<AccessibilityFault[]> {
  const element = await (await found(page, target)).elementHandle();
  const frame = await element!.ownerFrame();
  await frame!.evaluate(axe);
  return frame!.evaluate(async (context) => {
    const { axe } = window as unknown as { axe: typeof import('axe-core') };
    const { violations } = await axe.run(context as Element, { resultTypes: ['violations'] });
    return violations.map(({ id, help, nodes }) => ({ rule: id, help, places: nodes.map((node) => node.html) }));
  }, element);
}
