// What happens to a sheet when others record it at the same time: it stays whole.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { started } from '../support/killed.ts';
import { ampwright, program } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const entries = Array.from({ length: 300 }, (_, i) => `x_${i} = ${i} V + 1 V`).join('\n');
const OLD = `# Long sheet, invented\n\n\`\`\`ampwright\n${entries}\n\`\`\`\n`;

describe('recording a sheet', function () {
  this.timeout(120_000);
  const folder = temporaryFolder();

  it('leaves one whole file when two do it at once', async () => {
    const path = folder.write('a.ampwright.md', OLD);
    const bundle = await program();
    const codes = await Promise.all([1, 2, 3].map(() => started(process.execPath, [bundle, 'record', path])));
    assert.ok(codes.includes(0));
    assert.ok(codes.every((code) => code === 0 || code === 2));
    const { code, stdout } = await ampwright(['record', path]);
    assert.deepEqual([code, stdout], [0, `unchanged ${path}\n`]);
    assert.deepEqual(readdirSync(folder.path), ['a.ampwright.md']);
  });
});
