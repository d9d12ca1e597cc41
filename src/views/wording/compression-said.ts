// What the compression points to: dry and with oil side by side, like with like, and what to do before anything comes apart.
import { calculationOn } from '../../book/taken/on-machine.ts';
import type { Series, SeriesPoint } from '../../book/book.ts';
import { plainName } from '../../book/names.ts';
import { daysBetween } from '../../quantity/day-arithmetic.ts';
import type { Text } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { dayText } from './day.ts';
import { resultText } from './figure.ts';
import { valueText } from './value.ts';

/** Readings further apart than this are of two different engines (judgement: two months of use or of standing). */
const mostDaysApart = 62;

/** Where the engine points to its rings, a bore that only stood dry reads the same (common practice). */
const soak =
  'A bore that only stood dry reads the same: soak it, let it run, and read it again cold and dry before anything comes apart.';

function isCompression(series: Series): boolean {
  return plainName(series.item) === 'compression';
}

/** Newest cold and dry readings, newest with oil, of one record each. */
function pairOf({ book }: ViewContext): { readonly dry: readonly SeriesPoint[]; readonly wet: readonly SeriesPoint[] } {
  const all = book.series
    .filter(({ item }) => plainName(item).startsWith('compression'))
    .flatMap(({ points }) => points)
    .filter(({ value, corrected, condition }) => {
      const warm = condition.some((word) => /\b(?:hot|warm)\b/u.test(word));
      return corrected === undefined && value.kind === 'read' && !warm;
    });
  const newest = (oiled: boolean): readonly SeriesPoint[] => {
    const those = all
      .filter(({ condition }) => condition.some((word) => word.includes('oil')) === oiled)
      .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
    const last = those.at(-1);
    return those.filter(({ job, side }) => job === last?.job && side === last.side);
  };
  return { dry: newest(false), wet: newest(true) };
}

function told(points: readonly SeriesPoint[]): string {
  return points
    .map((one) => [one.position, valueText(one.value) ?? '?'].filter((word) => word !== '').join(' '))
    .join(', ');
}

/** A sentence under the compression; none where nothing was read with oil, or on another occasion. */
export function compressionSaid(context: ViewContext, series: Series): readonly Text[] {
  if (!isCompression(series)) return [];
  const { book, say } = context;
  const { dry, wet } = pairOf(context);
  const [first, second] = [dry[0], wet[0]];
  if (first === undefined || second === undefined) return [];
  const [from, to] = [first.day, second.day].toSorted();
  const renewed = series.basis.some(
    (one) => from !== undefined && to !== undefined && from < one.from && one.from <= to,
  );
  if (renewed || Math.abs(daysBetween(first.day, second.day)) > mostDaysApart) return [];
  const worked = calculationOn(book, 'compression-spread')?.worked;
  const rise = worked?.figures['largest rise'];
  const says = worked?.words['says'];
  if (says === undefined || rise === undefined || 'length' in rise) return [];
  const pair = `${say('Cold and dry')} ${told(dry)} (${dayText(first.day)}), ${say('with oil in the bore')} ${told(wet)} (${dayText(second.day)})`;
  const rings = says.includes('rings or bore');
  return [
    `${pair}: ${say('up by as much as')} ${resultText(rise)}. ${sentenceOf(say(says))}${rings ? ` ${say(soak)}` : ''} (${say('common practice')})`,
  ];
}

function sentenceOf(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
