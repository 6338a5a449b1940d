// Pages in a real browser, for tests of what is drawn and read: an installed Chrome or Chromium, else the one in a package.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from '../editor/host/browser.ts';

const require = createRequire(import.meta.url);

/** How a page is looked at. */
export interface Look {
  readonly width?: number;
  readonly height?: number;
  readonly colours?: 'light' | 'dark';
  readonly contrast?: 'more';
  readonly forced?: boolean;
}

/** The looks that everything is checked in. */
export const LOOKS: Readonly<Record<string, Look>> = {
  light: { colours: 'light' },
  dark: { colours: 'dark' },
  'high contrast': { colours: 'dark', contrast: 'more' },
  'forced colours': { colours: 'dark', forced: true },
  narrow: { colours: 'light', width: 320 },
};

let browser: Promise<Browser> | null = null;

/** A page that shows this HTML and reaches no network. */
export async function show(html: string, look: Look = {}): Promise<Page> {
  browser ??= startBrowser();
  const page = await (await browser).newPage({
    viewport: { width: look.width ?? 1200, height: look.height ?? 900 },
    colorScheme: look.colours ?? 'light',
    contrast: look.contrast ?? null,
    forcedColors: look.forced ? 'active' : 'none',
    bypassCSP: true,
  });
  await page.setContent(html);
  return page;
}

/** Closes the browser that `show` opened. */
export async function closeBrowser(): Promise<void> {
  const opened = await browser;
  browser = null;
  await opened?.close();
}

/** What axe-core has to say against a page, one line a finding: rule, what is wrong, where. WCAG 2.2 A and AA and its best practices. */
export async function accessibilityFindings(page: Page): Promise<readonly string[]> {
  await page.addScriptTag({ content: readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8') });
  return page.evaluate(async () => {
    const axe = (globalThis as unknown as { axe: { run: (context: Document, options: object) => Promise<AxeResults> } }).axe;
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const { violations } = await axe.run(document, { runOnly: tags });
    return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${v.help}: ${n.html.slice(0, 200)}`));
  });
}

/** How far the page reaches beyond its window, and what sticks out of its cell. */
export function overflow(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
    const cells = [...document.querySelectorAll('.aw-table td, .aw-table th, .aw-register td, .aw-register th')];
    const out = cells.filter((c) => c.scrollWidth > c.clientWidth + 1 && !c.querySelector('[tabindex]') && !c.closest('thead'));
    return [...(wide > 0 ? [`page by ${wide}px`] : []), ...out.map((c) => `${c.className}: ${c.textContent?.slice(0, 60)}`)];
  });
}

interface AxeResults {
  readonly violations: readonly { readonly id: string; readonly help: string; readonly nodes: readonly { readonly html: string }[] }[];
}
