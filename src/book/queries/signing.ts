// A signed sheet is not used again: a record that was changed after it was signed.
import type { Look } from './query.ts';
import { query } from './query.ts';

/** The print written at the signature is not that of the record’s words now. */
export const changedAfterSigning: Look = ({ ground }) =>
  ground.all
    .filter(({ signed, print }) => signed?.print !== undefined && print !== undefined && signed.print !== print)
    .map((job) =>
      query(
        'changed-after-signing',
        { file: job.file, path: ['signed', 'print'] },
        `${job.title}: signed by ${job.signed?.by ?? ''} on ${job.signed?.date ?? ''}, and changed since; its print is now ${job.print ?? ''}`,
        'correct it in a later record, or sign it anew with the new print',
      ),
    );
