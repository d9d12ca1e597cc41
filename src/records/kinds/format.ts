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
    const message = `Format version “${words}” is not known to this program.`;
    return refuse(desk, spot, 'format-unknown', message, 'Write `splitpin: 1`, or use a newer program.');
  },
  told: { kind: 'choice', words: [String(formatVersion)] },
};
