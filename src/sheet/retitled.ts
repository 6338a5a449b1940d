// A sheet under another title: in its front matter and in its first heading; everything else keeps its bytes.
import { stringify } from 'yaml';
import { fileLines } from './file-lines.ts';
import { frontMatterEnd } from './front-matter-lines.ts';

/** The text with the title, and the day of issue, in place of the ones that it has. A field that is not there is not added. */
export function retitled(text: string, title: string, issued: string): string {
  const line = title.replace(/\s+/g, ' ').trim();
  const lines = fileLines(text);
  const end = lines.start(frontMatterEnd(lines));
  const front = text
    .slice(0, end)
    .replace(/^title:.*$/m, () => `title: ${stringify(line, { lineWidth: 0 }).trimEnd()}`)
    .replace(/^issued:.*$/m, () => `issued: ${issued}`);
  const heading = line.replace(/[\\`*_[\]<>#&!|~]/g, '\\$&');
  return front + text.slice(end).replace(/^# .*$/m, () => `# ${heading}`);
}
