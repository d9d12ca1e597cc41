// Before and after every test file: random values begin from a seed that is known, and the process is left as it was found.
import fc from 'fast-check';
import { afterAll, expect } from 'vitest';
import { seedOf } from './seed.ts';

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: seedOf(process.env) });

/** What other files of the same worker would feel. */
function state(): unknown {
  const { TZ, LANG, LC_ALL, HOME, TMPDIR } = process.env;
  return { folder: process.cwd(), exit: process.exitCode, TZ, LANG, LC_ALL, HOME, TMPDIR };
}

const found = state();
afterAll(() => expect(state(), 'what this file left behind').toEqual(found));
