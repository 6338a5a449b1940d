// The renderer as the editor loads it: one bundled module, on a page with a place for outputs.
import { build } from 'esbuild';
import type { Page } from 'playwright-core';
import { type Look, show } from '../support/browser.ts';

let bundled: Promise<string> | null = null;

/** The text of the bundle, minified as it is shipped. */
export function bundle(): Promise<string> {
  bundled ??= build({
    entryPoints: ['src/renderer/renderer.ts'],
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    write: false,
    legalComments: 'none',
  }).then((result) => result.outputFiles[0]!.text);
  return bundled;
}

// What the editor does, as far as a renderer notices; the bundle before it exports `activate`.
const HOST = `
function start(sends) {
  globalThis.messages = [];
  const renderer = globalThis.activate(sends ? { postMessage: (message) => messages.push(message) } : {});
  globalThis.render = (id, json) => renderer.renderOutputItem({ id, json: () => json }, document.getElementById(id));
}`;

/** How the page stands in for the editor. */
export interface Stage {
  readonly look?: Look;
  /** The editor's class on the body: `vscode-light`, `vscode-dark`, `vscode-high-contrast`. */
  readonly theme?: string;
  /** Whether the renderer may send messages. */
  readonly messaging?: boolean;
}

/** A page with the renderer activated: `render(id, json)` puts an output into `#id`, `messages` holds what was sent. */
export async function stage({ look, theme = 'vscode-light', messaging = true }: Stage = {}): Promise<Page> {
  const page = await show(
    `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Outputs</title></head>
     <body class="${theme}"><main><h1>Outputs</h1><div id="one"></div><div id="two"></div></main></body></html>`,
    look,
  );
  const background = { 'vscode-light': '#ffffff', 'vscode-dark': '#1e1e1e', 'vscode-high-contrast': '#000000' }[theme] ?? '#fff';
  const ink = theme === 'vscode-light' ? '#1f1f1f' : '#e0e0e0';
  await page.addStyleTag({
    content: `body { --vscode-editor-background: ${background}; --vscode-editor-foreground: ${ink}; background: ${background}; color: ${ink}; }`,
  });
  await page.addScriptTag({
    type: 'module',
    content: `${(await bundle()).replace(/export\s*\{[^}]*?(\w+) as activate[^}]*\}/, 'globalThis.activate = $1')}\n${HOST}\nstart(${messaging});`,
  });
  await page.waitForFunction(() => 'render' in globalThis);
  return page;
}

/** Renders a value into the output `id`. */
export function render(page: Page, id: string, json: unknown): Promise<void> {
  return page.evaluate(([i, j]) => (globalThis as unknown as { render: (id: unknown, json: unknown) => void }).render(i, j), [
    id,
    json,
  ] as const);
}

/** What the renderer has sent so far. */
export function messages(page: Page): Promise<unknown[]> {
  return page.evaluate(() => (globalThis as unknown as { messages: unknown[] }).messages);
}
