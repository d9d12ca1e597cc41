// `0.50 > 0.35`: what a pair of blanks was told in one line, as found and as left.
import type { Answer } from '../../entry/answer.ts';
import type { Blank } from '../../entry/blank.ts';

/** An answer for each side that was said. */
export function sidesOf(found: Pick<Blank, 'id'>, left: Pick<Blank, 'id'>, value: string): readonly Answer[] {
  const [first = '', second = ''] = value.split('>').map((one) => one.trim());
  return [
    ...(first === '' ? [] : [{ blank: found.id, value: first }]),
    ...(second === '' ? [] : [{ blank: left.id, value: second }]),
  ];
}
