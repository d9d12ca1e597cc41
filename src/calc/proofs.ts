// Which calculation answers for which published rows, and what it is given for each.
import type { Proof } from './proof.ts';
import { airProofs } from './proofs-air.ts';
import { engineProofs } from './proofs-engine.ts';
import { rollingProofs } from './proofs-rolling.ts';
import { stripProofs } from './proofs-strip.ts';
import { threadProofs } from './proofs-threads.ts';
import { torqueProofs } from './proofs-torque.ts';

export const proofs: readonly Proof[] = [
  ...threadProofs,
  ...torqueProofs,
  ...stripProofs,
  ...engineProofs,
  ...airProofs,
  ...rollingProofs,
];
