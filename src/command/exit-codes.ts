// What the program says to whoever called it, as a number.

export const exitCodes = {
  /** All is well; a binder may still have queries for a person to look at. */
  fine: 0,
  /** Something in the records, the photos or the folders must be put right first; no output was changed. */
  problems: 1,
  /** The command itself was not understood: an unknown option, sheet or paper. */
  usage: 2,
  /** Writing broke off: the disk is full or was taken away. The old output is untouched. */
  writing: 3,
  /** A fault of this program. */
  fault: 70,
} as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];
