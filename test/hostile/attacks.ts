// Texts that would run, load or lead elsewhere if a page or a comment took them for markup, and a sheet with one in every place.

// biome-ignore format: a list of attacks
export const ATTACKS: readonly string[] = [
  '<script>alert(1)</script>', '<img src=x onerror=alert(1)>', '[x](javascript:alert(1))', '[x](command:workbench.action.quit)',
  '[x](data:text/html,<script>1</script>)', '![x](https://evil.invalid/a.png)', '<a href="javascript:x">y</a>', '</style><script>x</script>', '--> <b>',
  '<svg><script>1</script></svg>', '"><iframe>', '[x](vbscript:x)', '<javascript:alert(1)>', '&lt;script&gt;', '[x]: javascript:alert(1)',
  '[x](JaVaScRiPt:alert(1))', '[x](java\tscript:alert(1))', '[x](&#106;avascript:alert(1))', '[x](javascript&colon;alert(1))', '[x](<java script:x>)',
  '[x](vscode://evil.invalid/x)', '[x](VSCODE-insiders:x)', '[x](file:///etc/passwd)', '[x](FiLe:/etc/passwd)', '[x](//evil.invalid/x)', '[x](\\\\evil.invalid\\x)',
  '[x](../../../etc/passwd)', '[x](%2e%2e/%2e%2e/etc/passwd)', '![x](file:///etc/passwd)', '![x](data:image/svg+xml,<svg onload=alert(1)>)',
  '<meta http-equiv=refresh content="0;url=https://evil.invalid">', '<base href=https://evil.invalid>', '<link rel=stylesheet href=https://evil.invalid/a.css>',
  '<style>@import "https://evil.invalid/a.css"</style>', '<math><mtext></mtext><mglyph><svg><mtext><style><path id="</style><img onerror=alert(1) src>">',
  '<details open ontoggle=alert(1)>', '<form action=https://evil.invalid><button>', '$' + '{alert(1)}', '{{constructor.constructor("alert(1)")()}}',
];

/** A sheet in whose prose, names, texts, cells, captions and front matter an attack stands. `number` tells the names of several apart. */
export function attackedSheet(attack: string, value: string, number = 0): string {
  const quoted = attack.replaceAll('\\', '\\\\').replaceAll('"', '\\"').replaceAll('\t', ' ');
  const yaml = attack.replaceAll("'", "''");
  const front = number === 0 ? `---\ntitle: '${yaml}'\nowner: '${yaml}'\n---\n` : '';
  return `${front}
# ${attack}

${attack}

Table t_${number} — ${attack}

| name | x / V |
| --- | --- |
| ${attack.replaceAll('|', '\\|')} | ${attack} |

\`\`\`ampwright
a_${number} = ${value}   from plate "${quoted}"   "${quoted}"
b_${number} = "${quoted}"
shall a_${number} <= 2 V   because "${quoted}"
curve x * 1 V "${quoted}" over x from 0 to 1
action "${quoted}" by "${quoted}" due 2026-12-15
${attack} = 1 V
c_${number} = 1 ${attack}
# ${attack}
\`\`\`
`;
}
