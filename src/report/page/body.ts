// The sheet itself as HTML.
import type { SheetView } from '../../view/model.ts';
import { escapeText, toHtml } from '../../view/node.ts';
import { type BodyPart, bodyParts, proseLinks } from '../body.ts';
import type { ReportInput } from '../input.ts';
import { type ProseRenderer, proseRenderer } from '../prose.ts';

/** The cells of the sheet in order. */
export function body(input: ReportInput, view: SheetView): string {
  const prose = proseRenderer(proseLinks(input), input.sheet.frontMatter.title);
  return bodyParts(input, view)
    .map((part) => html(part, prose))
    .join('\n');
}

function html(part: BodyPart, prose: ProseRenderer): string {
  switch (part.kind) {
    case 'prose':
      return prose.render(part.markdown);
    case 'conflict':
      return `<pre>${escapeText(part.text)}</pre>`;
    case 'block':
      return toHtml(part.section);
    default:
      return part satisfies never;
  }
}
