// What scrolls can be reached with the Tab key, but only while there is something to scroll.

/** Follows the room of everything that may scroll in a place for outputs, as long as it is there. */
export function followScrollers(into: HTMLElement): void {
  for (const scroller of into.querySelectorAll('.aw-scrolls, .aw-datascroll')) watched.observe(scroller);
}

const watched = new ResizeObserver((entries) => {
  for (const { target } of entries) {
    if (!target.isConnected) watched.unobserve(target);
    else if (target.scrollWidth > target.clientWidth + 1 || target.scrollHeight > target.clientHeight + 1)
      target.setAttribute('tabindex', '0');
    else target.removeAttribute('tabindex');
  }
});
