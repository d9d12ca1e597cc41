// Limits: a line across the field with its name at the right end, above the line or below it where two stand close.
import type { PlotBlock } from '../sheet/sheet.ts';
import { labelSize, round, straight, type Field } from './axes.ts';
import { dashes } from './dashes.ts';
import type { Primitive } from './primitive.ts';
import { overlaps, textRoom, type Taken } from './room.ts';
import type { Scale } from './scales.ts';

export interface LimitLines {
  readonly drawn: readonly Primitive[];
  readonly taken: readonly Taken[];
}

/** Draws every limit; a name that finds no room above or below its line is left to the table beside the plot. */
export function limitLines(limits: PlotBlock['limits'], y: Scale, field: Field): LimitLines {
  const taken: Taken[] = [];
  const drawn: Primitive[] = [];
  for (const limit of limits) {
    const at = y.place(limit.y);
    drawn.push({
      kind: 'path',
      d: straight(field.left, at, field.right, at),
      stroke: { ink: 'ink', width: 0.9, dash: dashes(limit.line) },
    });
    const room = [at - 3, at + labelSize + 2].map((base) => nameRoom(limit.name, base, field));
    const free = room.find((place) => place.top >= field.top - 4 && !taken.some((other) => overlaps(other, place)));
    if (free === undefined) continue;
    taken.push(free);
    drawn.push({
      kind: 'text',
      x: round(field.right),
      y: round(free.bottom - 2),
      text: limit.name,
      size: labelSize,
      anchor: 'end',
    });
  }
  return { drawn, taken };
}

function nameRoom(name: string, base: number, field: Field): Taken {
  return { left: field.right - textRoom(name, labelSize), right: field.right, top: base - labelSize, bottom: base + 2 };
}
