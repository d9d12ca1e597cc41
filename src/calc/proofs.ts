// Which calculation answers for which published rows, and what it is given for each.
import type { Proof } from './proof.ts';
import { airProofs } from './proofs-air.ts';
import { engineProofs } from './proofs-engine.ts';
import { fastenerProofs } from './proofs-fasteners.ts';
import { rollingProofs } from './proofs-rolling.ts';
import { threadProofs } from './proofs-threads.ts';

export const proofs: readonly Proof[] = [
  ...threadProofs,
  ...fastenerProofs,
  ...engineProofs,
  ...airProofs,
  ...rollingProofs,
];
