// The fault tables of several files as one, in the order of the files; those of a machine come after the general ones.
import { noFaultTables, type FaultTables } from './fault-model.ts';

/** All causes, tests and rows of several files. */
export function faultTables(files: readonly FaultTables[]): FaultTables {
  return {
    causes: files.flatMap((file) => file.causes),
    tests: files.flatMap((file) => file.tests),
    together: files.flatMap((file) => file.together),
  };
}

/** The general tables with what a machine adds; an id that is taken is told by `givenTwice`, and the earlier one keeps it. */
export function addedFaults(known: FaultTables | undefined, own: readonly FaultTables[]): FaultTables {
  return faultTables([known ?? noFaultTables, ...own]);
}
