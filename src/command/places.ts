// Where output goes when nobody says: `out/` in the current folder, but never inside a machine folder.
import { dirname, join } from 'node:path';
import { isWithin } from '../cache/claim.ts';

/** The folder for a machine's binder, or for its loose prints. */
export function defaultOut(machine: string, name: string, current: string): string {
  const base = isWithin(current, machine) ? dirname(machine) : current;
  return join(base, 'out', name);
}
