// Messages to the editor: any renderer, of any extension or of a changed output, may send one in the name of results.
import assert from 'node:assert/strict';
import { nameToReveal } from '../../src/view/reveal.ts';

describe('a message in the name of results', () => {
  const check = (what: string, message: unknown, name: string | null) => it(what, () => assert.equal(nameToReveal(message), name));

  check('asks for a name', { type: 'reveal', name: 'I_n' }, 'I_n');
  check('asks for a column', { type: 'reveal', name: 'motors.K' }, 'motors.K');
  for (const nothing of [undefined, null, '', 'reveal', 7, [], {}, () => 'I_n']) check(`is none: ${String(nothing)}`, nothing, null);
  check('of another type is dropped', { type: 'run', name: 'I_n' }, null);
  check('without a name is dropped', { type: 'reveal' }, null);
  check('with an empty name is dropped', { type: 'reveal', name: '' }, null);
  check('with a name of a megabyte is dropped', { type: 'reveal', name: 'x'.repeat(1e6) }, null);
  check('with a list for a name is dropped', { type: 'reveal', name: ['I_n'] }, null);
  check('with something that turns into a name is dropped', { type: 'reveal', name: { toString: () => 'I_n' } }, null);
  check('with more than it may have is dropped', { type: 'reveal', name: 'I_n', command: 'workbench.action.quit' }, null);
  check('with a prototype of its own making is dropped', JSON.parse('{"type":"reveal","name":"I_n","__proto__":{"name":"x"}}'), null);
});
