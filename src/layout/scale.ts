// The sizes of type and the grid of baselines that everything stands on. Nothing is set under 9 points.
import { millimetre } from './paper.ts';

/** Distance of baselines of running text; blocks begin on its halves. */
export const leading = 14;
export const half = leading / 2;

export interface TypeSize {
  readonly size: number;
  readonly leading: number;
}
export const text: TypeSize = { size: 11, leading };
export const small: TypeSize = { size: 9.5, leading: 12 };
export const least: TypeSize = { size: 9, leading: 11.5 };
/** Values to be read at arm's length. */
export const big: TypeSize = { size: 14, leading: 17.5 };
export const title: TypeSize = { size: 21, leading: 28 };
export const headings: readonly TypeSize[] = [
  { size: 15, leading: 21 },
  { size: 12.5, leading: 17.5 },
  { size: 11, leading: 14 },
];

/** Rows to write in with a pencil and gloves. */
export const workRow = 28;
/** Rows that are ticked and not written in: not under 8 mm. */
export const tickRow = 24.5;
/** Rows to be read. */
export const readRow = 17.5;
/** Rows of a card that is whole on one side. */
export const cardRow = 14;
export const tickBox = 5.5 * millimetre;
export const writeBox = { width: 25.2 * millimetre, height: 9.05 * millimetre };
export const gutter = 8;

export const thin = 0.35;
export const firm = 0.8;
export const heavy = 1.6;

/** Where the baseline stands below the top of a line: type is centred in its leading by its capitals. */
export function baseline(type: TypeSize): number {
  return (type.leading + type.size * 0.7) / 2;
}
