// Links that call commands of the extension, for pages and hovers.

export const OPEN_REFERENCE = 'ampwright.openReference';

export function commandLink(command: string, ...args: readonly unknown[]): string {
  return `command:${command}?${encodeURIComponent(JSON.stringify(args))}`;
}
