// What the ids of rows on fasteners stand for.
import { cellNumber } from '../table/table.ts';

/** `1_4` in an id is 1/4, `8.8_over16` a thread over 16 mm. */
export const inch = (text: string | undefined): string => (text ?? '').replace('_', '/');

/** The same with its series: rows on SAE bolts are Unified, coarse or fine by the threads per inch. */
export function unified(text: string | undefined): string {
  const name = inch(text);
  const [size = '', perInch = ''] = name.split('-');
  const coarse = cellNumber('inch-threads', size + ' UNC', 'threads per inch') === Number(perInch);
  return name + (coarse ? ' UNC' : ' UNF');
}

/** A thread and class of which the strength is asked. */
export const classAt = (text: string | undefined): { thread: string; class: string } =>
  text?.endsWith('_over16') === true ? { thread: 'M20', class: '8.8' } : { thread: 'M8', class: text ?? '' };
