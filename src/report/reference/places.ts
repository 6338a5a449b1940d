// Where functions and tables stand on the pages of the reference, and links to them.
import { escapeText } from '../../view/node.ts';

/** Finds what a name stands for on any page. */
export interface Places {
  /** The place as seen from a page, such as `motors.html#function-slip`; null where the reference does not know the name. */
  readonly find: (name: string, from: string) => string | null;
}

export function functionPlace(name: string): string {
  return `function-${name}`;
}

export function tablePlace(name: string): string {
  return `table-${name}`;
}

/** The places of names; `pages` gives for each file its places by name. */
export function placesOf(pages: ReadonlyMap<string, ReadonlyMap<string, string>>): Places {
  const all = new Map([...pages].flatMap(([file, places]) => [...places].map(([name, place]) => [name, { file, place }] as const)));
  return {
    find: (name, from) => {
      const found = all.get(name);
      return found ? `${found.file === from ? '' : found.file}#${found.place}` : null;
    },
  };
}

/** A name in code, as a link to where it stands. */
export function codeLink(name: string, from: string, places: Places): string {
  const place = places.find(name, from);
  const code = `<code>${escapeText(name)}</code>`;
  return place === null ? code : `<a href="${place}">${code}</a>`;
}

/** Prose as HTML with the names that it quotes as code made links. */
export function linkNames(html: string, from: string, places: Places): string {
  return html.replace(/<code>([A-Za-z_]\w*)<\/code>/g, (_, name: string) => codeLink(name, from, places));
}
