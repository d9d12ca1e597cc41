// The axes of a plot: two thin rules, short ticks, their values, and what they measure.
import type { Primitive } from './primitive.ts';
import { textRoom } from './room.ts';
import type { Scale, Tick } from './scales.ts';

/** The inner rectangle, where the readings stand. */
export interface Field {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const labelSize = 9;

const thin = { ink: 'ink', width: 0.5 } as const;
const faint = { ink: 'rule', width: 0.35 } as const;

/** A straight line as a path. */
export function straight(x1: number, y1: number, x2: number, y2: number): string {
  return 'M' + at(x1, y1) + 'L' + at(x2, y2);
}

/** A point of a path, rounded to a hundredth so that pictures repeat to the byte. */
export function at(x: number, y: number): string {
  return String(round(x)) + ' ' + String(round(y));
}

export function round(value: number): number {
  return Math.round(value * 100) / 100;
}

/** Left axis: faint lines across the field at every tick, values to the left, the label above. */
export function yAxis(scale: Scale, field: Field, label: string): readonly Primitive[] {
  const lines = scale.ticks.flatMap((tick): readonly Primitive[] => [
    { kind: 'path', d: straight(field.left, tick.at, field.right, tick.at), stroke: faint },
    {
      kind: 'text',
      x: round(field.left - 5),
      y: round(tick.at + 3.2),
      text: tick.label,
      size: labelSize,
      anchor: 'end',
    },
  ]);
  const rule: Primitive = { kind: 'path', d: straight(field.left, field.top, field.left, field.bottom), stroke: thin };
  const name: Primitive = {
    kind: 'text',
    x: 0,
    y: labelSize,
    text: label,
    size: labelSize,
    anchor: 'start',
    strong: true,
  };
  return [...lines, rule, name];
}

/** Bottom axis: ticks below the rule, values under them, the label at the right end of the last line. */
export function xAxis(scale: Scale, field: Field, label: string): readonly Primitive[] {
  const under = field.bottom + 4 + labelSize;
  const ticks = withRoom(scale.ticks).flatMap((tick): readonly Primitive[] => [
    { kind: 'path', d: straight(tick.at, field.bottom, tick.at, field.bottom + 4), stroke: thin },
    { kind: 'text', x: round(tick.at), y: round(under), text: tick.label, size: labelSize, anchor: 'middle' },
  ]);
  const rule: Primitive = {
    kind: 'path',
    d: straight(field.left, field.bottom, field.right, field.bottom),
    stroke: thin,
  };
  const name: Primitive = {
    kind: 'text',
    x: round(field.right),
    y: round(under + labelSize + 3),
    text: label,
    size: labelSize,
    anchor: 'end',
    strong: true,
  };
  return [...ticks, rule, name];
}

/** Every tick, or every second, third … of them, so that the labels do not meet. */
function withRoom(ticks: readonly Tick[]): readonly Tick[] {
  for (let stride = 1; stride < ticks.length; stride += 1) {
    const kept = ticks.filter((_tick, index) => index % stride === 0);
    const fits = kept.every((tick, index) => index === 0 || fitsAfter(kept[index - 1], tick));
    if (fits) return kept;
  }
  return ticks.slice(0, 1);
}

function fitsAfter(before: Tick | undefined, tick: Tick): boolean {
  if (before === undefined) return true;
  return tick.at - before.at >= (textRoom(before.label, labelSize) + textRoom(tick.label, labelSize)) / 2 + 4;
}
