// The notebook renderer: draws the view model of a cell, and tells the editor which symbol was clicked.
import { ledger } from '../view/ledger.ts';
import type { CellView } from '../view/model.ts';
import { element, type ViewNode } from '../view/node.ts';
import type { Reveal } from '../view/reveal.ts';
import { STYLE } from '../view/style.ts';
import { copySentences } from './copy.ts';
import { mount } from './mount.ts';
import { addPeeks } from './peek.ts';
import { addReaders, positionsOf } from './readout.ts';
import { followScrollers } from './scrollers.ts';
import { readCellView } from './validate.ts';

/** What the editor hands to a renderer. */
export interface RendererContext {
  /** Absent where the renderer has no messages, such as in a comparison. */
  readonly postMessage?: (message: unknown) => void;
}

export interface OutputItem {
  readonly id: string;
  json(): unknown;
}

export const activate = (context: RendererContext) => {
  addStyle();
  const shown = new WeakMap<HTMLElement, CellView | null>();
  return {
    renderOutputItem(item: OutputItem, into: HTMLElement): void {
      if (!shown.has(into)) {
        into.addEventListener('click', (event) => reveal(event, context));
        into.addEventListener('copy', (event) => copySentences(event, into, shown.get(into) ?? null));
        addPeeks(into);
      }
      const { tree, view } = content(item);
      shown.set(into, view);
      const positions = positionsOf(into);
      mount(tree, into, () => view && addReaders(into, view, positions));
      followScrollers(into);
    },
    disposeOutputItem(): void {},
  };
};

function content(item: OutputItem): { readonly tree: ViewNode; readonly view: CellView | null } {
  try {
    const read = readCellView(item.json());
    return 'view' in read ? { tree: ledger(read.view), view: read.view } : refusal(read.fault);
  } catch (error) {
    return refusal(error instanceof Error ? error.message : String(error));
  }
}

function refusal(fault: string) {
  const words = `These results can't be shown (${fault}). They are made again when the sheet is edited.`;
  return { tree: element('div', { class: 'aw-ledger' }, words), view: null };
}

function reveal(event: Event, { postMessage }: RendererContext): void {
  if (!(event.target instanceof Element) || postMessage === undefined) return;
  const name = event.target.closest('[data-name]')?.getAttribute('data-name');
  if (!name) return;
  event.preventDefault();
  const message: Reveal = { type: 'reveal', name };
  postMessage(message);
}

// One style sheet for all outputs; it is a constructed one, so that no policy on inline styles stands against it.
function addStyle(): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(STYLE);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}
