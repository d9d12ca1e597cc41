// What is told of a machine whose making ended in a fault of this program.
import { exitCodes } from '../exit-codes.ts';
import { faultText } from '../fault-text.ts';
import type { ToldMachine } from './told-machine.ts';

/** The machine as not made, with the fault as whoever reports it needs it. */
export function brokenDown(cause: unknown): ToldMachine {
  return {
    code: exitCodes.fault,
    lines: [
      { to: 'tell', line: 'A fault of this program, not of your records. No output was changed.' },
      { to: 'tell', line: faultText(cause) },
    ],
  };
}
