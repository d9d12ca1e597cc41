// The format version: a file of a later format is refused rather than half understood.
import { refuse } from '../shapes/desk.ts';
import { scalar } from '../shapes/plain.ts';
import type { Shape } from '../shapes/shape.ts';

/** The version that this program reads and writes. */
export const formatVersion = 1;

export const format: Shape<number> = {
  read: (tree, spot, desk) => {
    const words = scalar(tree, spot, desk);
    if (words === undefined || words === String(formatVersion)) return words === undefined ? undefined : formatVersion;
    const later = /^\d+$/u.test(words) && Number(words) > formatVersion;
    const message = later
      ? `Format version ${words} is later than this program, which reads version ${String(formatVersion)}.`
      : `“${words}” is no version of the format.`;
    const hint = later
      ? 'Use a newer program; this one would understand only a part of it.'
      : 'Write `splitpin: 1`, or let `splitpin upgrade` do it.';
    return refuse(desk, spot, 'format-unknown', message, hint);
  },
  told: { kind: 'choice', words: [String(formatVersion)] },
};
