// Long tables stop somewhere: a page stays small, says how much it left away, and where that stands.
import type { Inline, Row, Text } from '../../sheet/sheet.ts';
import { countOf } from './count.ts';

/** So many rows make a page or two to read; years of records are looked up in the log. */
const most = 400;

/** The first rows, and a line that tells of the rest when there is one. */
export function capped<T>(
  items: readonly T[],
  telling: (rest: number) => Text,
  shown = most,
): readonly (T | Extract<Row, { kind: 'band' }>)[] {
  if (items.length <= shown) return items;
  return [...items.slice(0, shown), { kind: 'band', text: telling(items.length - shown) }];
}

/** `120 older ones stand in their records.` */
export function olderOnes(say: (words: string) => string, rest: number): string {
  return `${countOf(rest, say('older one stands in its record'), say('older ones stand in their records'))}.`;
}

/** `120 older ones: 2021, 2020`, each year leading to the whole of it (compose/year-table-pages.ts makes these pages). */
export function olderByYear(
  say: (words: string) => string,
  folder: string,
  years: readonly string[],
): (rest: number) => Text {
  const unique = [...new Set(years)];
  return (rest) => [
    `${countOf(rest, say('older one'), say('older ones'))}; ${say('whole years')}: `,
    ...unique.flatMap((year, at): readonly Inline[] => [
      ...(at === 0 ? [] : [', ']),
      { kind: 'link', text: year, to: `page:${folder}/${year}.html` },
    ]),
  ];
}

/** `120 more of less weight are not shown here; check names them all.` */
export function moreOfThem(say: (words: string) => string, rest: number): string {
  return `${countOf(rest, say('more of less weight is not shown here'), say('more of less weight are not shown here'))}; ${say('the command check names them all')}.`;
}
