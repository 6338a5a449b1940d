// A look at what a row unfolds to, laid over the ledger while the pointer rests on its result or the focus is there. Nothing moves, save what
// stands below a ledger that is too low for the look: it makes room once and comes back when pointer and focus have left the ledger.
// It repeats what unfolds, so that a screen reader and the keyboard miss nothing without it.

/** Milliseconds: how long the pointer rests before the look, and how long it may take into it. */
const REST = 350;
const GRACE = 200;

/** Follows pointer, focus and Escape in a place for outputs. */
export function addPeeks(into: HTMLElement): void {
  let shown: { readonly peek: HTMLElement; readonly of: HTMLDetailsElement } | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const hide = () => {
    clearTimeout(timer);
    shown?.peek.remove();
    shown = null;
  };
  const leave = () => {
    hide();
    into.querySelector('.aw-room')?.remove();
  };
  const show = (of: HTMLDetailsElement) => {
    if (shown?.of === of && shown.peek.isConnected) return clearTimeout(timer);
    hide();
    const peek = peekOf(of);
    if (peek === null) return;
    shown = { peek, of };
    place(peek, of, into);
  };
  const soon = (run: () => void, wait: number) => {
    clearTimeout(timer);
    timer = setTimeout(run, wait);
  };

  into.addEventListener('pointerover', ({ target, pointerType }) => {
    if (pointerType === 'touch' || !(target instanceof Element)) return;
    const of = detailsAt(target);
    if (of) soon(() => show(of), shown?.of === of ? 0 : REST);
    else if (target.closest('.aw-peek')) clearTimeout(timer);
    else if (shown) soon(hide, GRACE);
    else clearTimeout(timer);
  });
  into.addEventListener('pointerleave', () => soon(leave, GRACE));
  into.addEventListener('focusin', ({ target }) => {
    if (!(target instanceof Element)) return;
    const of = target.matches('summary:focus-visible') ? detailsAt(target) : null;
    if (of) show(of);
    else hide();
  });
  into.addEventListener('focusout', leave);
  // A click on a symbol in the look must not take the focus from its row.
  into.addEventListener('mousedown', (event) => {
    if (event.target instanceof Element && event.target.closest('.aw-peek')) event.preventDefault();
  });
  // Opened in place: the look has done its work.
  into.addEventListener('toggle', leave, true);
  into.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || shown === null) return;
    event.stopPropagation();
    leave();
  });
}

/** The closed row whose result the pointer is on. */
function detailsAt(target: Element): HTMLDetailsElement | null {
  const details = target.closest<HTMLElement>('.aw-result')?.querySelector('details');
  return details && !details.open && target.closest('.aw-peek') === null ? details : null;
}

function peekOf(details: HTMLDetailsElement): HTMLElement | null {
  const inside = details.querySelector('.aw-inside');
  if (inside === null) return null;
  const peek = document.createElement('div');
  peek.className = 'aw-peek';
  peek.setAttribute('aria-hidden', 'true');
  peek.append(inside.cloneNode(true));
  for (const focusable of peek.querySelectorAll('a, [tabindex]')) focusable.setAttribute('tabindex', '-1');
  return peek;
}

/**
 * Below the line that it belongs to, or above it where only there the ledger has the room; never beyond its sides, since the editor cuts off
 * what reaches out of an output. Where it has room on neither side, the output grows by what is missing.
 */
function place(peek: HTMLElement, details: HTMLDetailsElement, into: HTMLElement): void {
  const ledger = details.closest<HTMLElement>('.aw-ledger');
  const line = details.querySelector('summary');
  if (ledger === null || line === null) return;
  ledger.append(peek);
  const [around, at, own] = [ledger, line, peek].map((element) => element.getBoundingClientRect()) as [DOMRect, DOMRect, DOMRect];
  const left = Math.max(0, Math.min(at.left - around.left, around.width - own.width));
  const room = { below: around.bottom - at.bottom - GAP, above: at.top - around.top - GAP };
  const above = room.below < own.height && room.above >= own.height;
  const top = above ? at.top - around.top - own.height - GAP : at.bottom - around.top + GAP;
  Object.assign(peek.style, { left: `${left}px`, top: `${top}px` });
  const missing = above ? 0 : Math.ceil(own.height - room.below);
  if (missing > 0) makeRoom(missing, into);
}

/** Room below the ledger, at least so many pixels of it. */
function makeRoom(height: number, into: HTMLElement): void {
  const there = into.querySelector<HTMLElement>('.aw-room');
  const room = there ?? document.createElement('div');
  room.className = 'aw-room';
  if (!there) into.append(room);
  if (height > room.offsetHeight) room.style.height = `${height}px`;
}

/** Pixels between a line and the look. */
const GAP = 2;
