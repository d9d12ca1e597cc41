// Verdicts of several readings in one cell: the worst, and at which positions where it is not at all of them.
import type { SeriesPoint, Verdict } from '../../book/book.ts';
import { count } from './count.ts';

/** From what asks for work to what asks for none. */
const worstFirst: readonly Verdict[] = [
  'past the limit',
  'outside the range',
  'too close to call with this instrument',
  'too close to call by the digits written',
  'worn, usable',
  'within standard',
  'limit is for another condition',
  'no limit known',
];

/** `4?.8 bar`: a digit could not be told. */
function isHalfRead({ value, corrected }: SeriesPoint): boolean {
  return value.kind === 'words' && /\d\?|\?\.?\d/u.test(value.text) && corrected === undefined;
}

/** So many positions are named; of more it is said how many. */
const mostNamed = 2;

/** `past the limit: right second`, `worn, usable: 4 of 6`, or the verdict alone where all are alike. `nameOf` names a position. */
export function verdictsText(
  say: (words: string) => string,
  points: readonly SeriesPoint[],
  nameOf: (position: string) => string = (position) => position,
): string {
  const worst = worstFirst.find((verdict) => points.some((point) => point.verdict === verdict));
  if (worst === undefined) return points.some(isHalfRead) ? say('not read in full, so not judged') : '';
  const those = points.filter((point) => point.verdict === worst);
  const judged = points.filter((point) => point.verdict !== undefined);
  if (those.length === judged.length) return say(worst);
  const names = those.map((point) => nameOf(point.position)).filter((name) => name !== '');
  const where =
    names.length > 0 && names.length <= mostNamed
      ? names.join(', ')
      : `${count(those.length)} ${say('of')} ${count(judged.length)}`;
  return `${say(worst)}: ${where}`;
}
