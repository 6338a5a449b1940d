// The browser's extension host has nothing of Node.
import assert from 'node:assert';

describe('the browser extension host', () => {
  it('is a worker without Node', () => {
    assert.equal(typeof process.versions, 'undefined');
    assert.equal(typeof (globalThis as { WorkerGlobalScope?: unknown }).WorkerGlobalScope, 'function');
  });
});
