// The outside of every page that reports make: one file that loads nothing and runs nothing.
import { escapeText } from '../../view/node.ts';

/** What a page may load and run: nothing but its own style. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

export interface HtmlDocument {
  /** BCP 47. */
  readonly language: string;
  readonly title: string;
  readonly style: string;
  /** HTML, made safe by whoever made it. */
  readonly body: string;
  /** Of Ampwright, where the page says which version made it. */
  readonly version: string | null;
}

/** The page as HTML text. */
export function htmlDocument({ language, title, style, body, version }: HtmlDocument): string {
  const generator = version === null ? '' : `\n<meta name="generator" content="Ampwright ${quoted(version)}">`;
  return `<!DOCTYPE html>
<html lang="${quoted(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">${generator}
<title>${escapeText(title)}</title>
<style>${style}</style>
</head>
<body>
${body}
</body>
</html>
`;
}

function quoted(text: string): string {
  return escapeText(text).replaceAll('"', '&quot;');
}
