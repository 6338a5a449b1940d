// Published values against the trade library and the notation itself.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { checkedIds, groups } from './groups.ts';
import { contactToDecisionIds } from './ids-contacts-to-decisions.ts';
import { motorAndCoilIds } from './ids-motors-and-coils.ts';
import { unitIds } from './ids-units.ts';
import { notComputed } from './not-computed.ts';
import { checkCase } from './support.ts';

describe('published values', () => {
  for (const [title, cases] of Object.entries(groups)) {
    describe(title, () => {
      cases.forEach(checkCase);
    });
  }

  it('are each checked, or have a reason why not', () => {
    const all = [...motorAndCoilIds, ...contactToDecisionIds, ...unitIds];
    const missing = all.filter((id) => !checkedIds.has(id) && !Object.hasOwn(notComputed, id));
    assert.deepEqual(missing, []);
  });

  it('are not both checked and excused', () => {
    assert.deepEqual(
      Object.keys(notComputed).filter((id) => checkedIds.has(id)),
      [],
    );
  });

  it('are as many as README says', () => {
    const said = /([\d,]+) published values/.exec(readFileSync('README.md', 'utf8'))?.[1];
    assert.equal(said, String(checkedIds.size));
  });

  it('name their source and carry a tolerance that fits it', () => {
    for (const { id, source, expected, tolerance = 0, why } of Object.values(groups).flat()) {
      assert.ok(source.length > 10, id);
      if (typeof expected !== 'string' && !(expected instanceof RegExp) && why === undefined) {
        assert.ok(tolerance >= 0 && tolerance <= 0.07 * Math.max(Math.abs(expected[0]), 0.1), `${id}: ${tolerance} of ${expected[0]}`);
      }
    }
  });
});
