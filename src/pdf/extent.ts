// The rectangle that a placed item takes on its page: figures say theirs to reading aids (ISO 14289-1, 7.3).
import type { PlacedItem } from '../layout/placed.ts';

/** Points from the upper left corner of the page. */
export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Undefined for what draws nothing. */
export function extent(item: PlacedItem): Extent | undefined {
  switch (item.kind) {
    case 'text':
      return sides(item.x, item.y - item.size, item.width, item.size * 1.25);
    case 'line':
      return {
        left: Math.min(item.x1, item.x2),
        top: Math.min(item.y1, item.y2),
        right: Math.max(item.x1, item.x2),
        bottom: Math.max(item.y1, item.y2),
      };
    case 'box':
    case 'fill':
    case 'plot':
    case 'photo':
      return sides(item.x, item.y, item.width, item.height);
    case 'tick':
      return sides(item.x, item.y, item.size, item.size);
    case 'circle':
      return sides(item.x - item.radius, item.y - item.radius, 2 * item.radius, 2 * item.radius);
    case 'modules': {
      const far = item.runs.reduce((most, run) => Math.max(most, run.row + 1, run.start + run.length), 0);
      return sides(item.x, item.y, far * item.module, far * item.module);
    }
    case 'total':
    case 'anchor':
    case 'empty':
    case 'field':
      return undefined;
  }
}

function sides(left: number, top: number, width: number, height: number): Extent {
  return { left, top, right: left + width, bottom: top + height };
}

/** The smallest rectangle round both. */
export function around(one: Extent | undefined, other: Extent): Extent {
  if (one === undefined) return other;
  return {
    left: Math.min(one.left, other.left),
    top: Math.min(one.top, other.top),
    right: Math.max(one.right, other.right),
    bottom: Math.max(one.bottom, other.bottom),
  };
}
