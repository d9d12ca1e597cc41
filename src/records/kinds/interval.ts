// `2000 mi or 6 months`: the step between services, where the first of its bounds to be reached counts.
import type { Read } from '../../quantity/quantity.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import { unitOf } from '../../quantity/unit-spelling.ts';
import type { Interval } from '../model.ts';
import { taken } from '../shapes/measured.ts';
import { scalar } from '../shapes/plain.ts';
import type { Shape } from '../shapes/shape.ts';

export const interval: Shape<Interval> = {
  read: (tree, spot, desk) => {
    const words = scalar(tree, spot, desk);
    return words === undefined || words === 'none' ? undefined : taken(readInterval(words), spot, desk);
  },
  told: {
    kind: 'text',
    written: 'a distance, months, running hours, or several joined by “or”',
    example: '2000 mi or 6 months',
  },
};

/**
 * Reads distance, calendar time in whole months, and running hours, each at most once.
 * @example readInterval('2000 mi or 6 months') // { distance: 2000 mi, months: 6, text: … }
 */
export function readInterval(words: string): Read<Interval> {
  let step: Interval = { text: words };
  for (const piece of words.split(/\s+or\s+|\s*,\s*(?!\d{3}\b)/u)) {
    const part = readPiece(piece.trim());
    if (!part.ok) return part;
    const twice = Object.keys(part.value).some((key) => Object.hasOwn(step, key));
    if (twice)
      return unreadable(`“${words}” gives one kind of bound twice`, 'write each of distance, months and hours once');
    step = { ...step, ...part.value };
  }
  return { ok: true, value: step };
}

function readPiece(piece: string): Read<Omit<Interval, 'text'>> {
  const calendar = /^(\d+)\s*(months?|mths?|mo|years?|yrs?|y)$/u.exec(piece);
  if (calendar !== null) {
    const count = Number(calendar[1]);
    const months = (calendar[2] ?? '').startsWith('y') ? count * 12 : count;
    return months > 0 ? { ok: true, value: { months } } : unreadable(`“${piece}” is no time at all`, 'write 6 months');
  }
  // The unit says which it is; a reader that is asked in vain looks for near misses, which takes its time.
  const unit = piece.replace(/^[\d\s.,½¼¾/]+/u, '');
  if (unitOf(unit, 'running time') !== undefined) {
    const running = readQuantity(piece, 'running time');
    return running.ok ? { ok: true, value: { running: running.value } } : running;
  }
  const distance = readQuantity(piece, 'distance ridden');
  if (distance.ok) return { ok: true, value: { distance: distance.value } };
  const told = distance.why.code === 'number-ambiguous' || distance.why.code === 'unit-missing';
  if (told) return distance;
  return unreadable(`“${piece}” is not a step between services`, 'write 2000 mi, 6 months or 50 h');
}

function unreadable(message: string, hint: string): Read<never> {
  return { ok: false, why: { code: 'number-unreadable', message, hint } };
}
