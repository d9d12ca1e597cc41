// The operators that draw one placed item. y grows downwards, as in the layout; grey is a share of black.
import type { PlacedItem } from '../layout/placed.ts';
import { points } from './numbers.ts';
import { plotOperators } from './plot-operators.ts';
import type { Typesetter } from './type.ts';

/** Operators of an item; photos, totals and anchors are the page's business and give none. */
export function itemOperators(item: PlacedItem, type: Typesetter): string {
  switch (item.kind) {
    case 'text':
      return type.show(item.text, item.face, item.size, item.x, item.y);
    case 'line':
      return line(item);
    case 'box':
      return points(item.weight) + ' w ' + (item.use === 'cut' ? '[0.5 3] 0 d ' : '[] 0 d ') + rectangle(item) + ' S';
    case 'fill':
      return points(1 - item.grey) + ' g ' + rectangle(item) + ' f 0 g';
    case 'tick':
      return tick(item);
    case 'circle':
      return points(item.weight) + ' w [] 0 d ' + circle(item.x, item.y, item.radius) + ' s';
    case 'modules':
      return modules(item);
    case 'plot':
      return plotOperators(item, type);
    case 'photo':
    case 'total':
    case 'anchor':
    case 'empty':
    case 'field':
      return '';
  }
}

function line(item: Extract<PlacedItem, { kind: 'line' }>): string {
  const dash = item.dash === undefined ? '[] 0 d ' : '[' + item.dash.map(points).join(' ') + '] 0 d ';
  return points(item.weight) + ' w ' + dash + point(item.x1, item.y1) + ' m ' + point(item.x2, item.y2) + ' l S';
}

export function rectangle(item: {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}): string {
  return point(item.x, item.y) + ' ' + point(item.width, item.height) + ' re';
}

export function point(x: number, y: number): string {
  return points(x) + ' ' + points(y);
}

/** A tick as a hand makes it: short down, long up, over the edge of its box. */
function tick(item: Extract<PlacedItem, { kind: 'tick' }>): string {
  const { x, y, size } = item;
  const path = [
    point(x + size * 0.2, y + size * 0.55) + ' m',
    point(x + size * 0.42, y + size * 0.8) + ' l',
    point(x + size * 0.85, y + size * 0.15) + ' l',
  ];
  return '1.8 w [] 0 d ' + path.join(' ') + ' S';
}

/** A circle of four curves. */
export function circle(x: number, y: number, r: number): string {
  const k = r * 0.5523;
  return [
    point(x + r, y) + ' m',
    point(x + r, y + k) + ' ' + point(x + k, y + r) + ' ' + point(x, y + r) + ' c',
    point(x - k, y + r) + ' ' + point(x - r, y + k) + ' ' + point(x - r, y) + ' c',
    point(x - r, y - k) + ' ' + point(x - k, y - r) + ' ' + point(x, y - r) + ' c',
    point(x + k, y - r) + ' ' + point(x + r, y - k) + ' ' + point(x + r, y) + ' c',
  ].join(' ');
}

function modules(item: Extract<PlacedItem, { kind: 'modules' }>): string {
  const { x, y, module } = item;
  const runs = item.runs.map((run) =>
    rectangle({ x: x + run.start * module, y: y + run.row * module, width: run.length * module, height: module }),
  );
  return '0 g ' + runs.join(' ') + ' f';
}
