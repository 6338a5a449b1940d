// Properties are tried on the same cases in every run, so that a run says something of the change alone. SEED=n tries others, SEED=random any.
import fc from 'fast-check';

const { SEED } = process.env;
fc.configureGlobal({ seed: SEED === undefined ? 20261120 : SEED === 'random' ? Date.now() : Number(SEED) });
