// Faults of the disk in a sentence; every other fault is a bug and is not for this file.

const sentences: Readonly<Record<string, string>> = {
  ENOSPC: 'The disk is full.',
  EDQUOT: 'Your share of the disk is used up.',
  EROFS: 'The disk cannot be written to.',
  EACCES: 'You may not write there.',
  EPERM: 'You may not write there.',
  EIO: 'The disk does not answer as it should.',
  EBUSY: 'The output folder is in use by another program.',
  EMFILE: 'Too many files are open at once.',
  ENAMETOOLONG: 'A name is longer than the disk can keep.',
};

/** What to tell when writing broke off; undefined when the fault is not one of the disk. */
export function writeFault(cause: unknown): string | undefined {
  if (!(cause instanceof Error) || !('code' in cause) || typeof cause.code !== 'string') return undefined;
  const sentence = sentences[cause.code];
  return sentence === undefined
    ? undefined
    : `${sentence} Writing broke off; the old output is untouched. (${cause.message})`;
}
