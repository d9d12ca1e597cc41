// Limits: a line across the field with its name at one end, where the readings leave room for it.
import type { PlotBlock } from '../sheet/sheet.ts';
import { labelSize, round, straight, type Field } from './axes.ts';
import { dashes } from './dashes.ts';
import type { Primitive } from './primitive.ts';
import { overlaps, textRoom, type Taken } from './room.ts';
import type { Scale } from './scales.ts';

export interface LimitLines {
  readonly lines: readonly Primitive[];
  readonly names: readonly Primitive[];
  readonly taken: readonly Taken[];
}

/** The places of the lines themselves: no label of a reading may stand on them. */
export function limitRooms(limits: PlotBlock['limits'], y: Scale, field: Field): readonly Taken[] {
  return limits.map((limit) => ({
    left: field.left,
    right: field.right,
    top: y.place(limit.y) - 0.5,
    bottom: y.place(limit.y) + 0.5,
  }));
}

/**
 * Draws every limit. Its name stands above or below its line, right or left, where no reading is; if readings are everywhere it
 * stands over them on a white ground; a name with no room at all beside the others is left to the table beside the plot.
 */
export function limitLines(
  limits: PlotBlock['limits'],
  y: Scale,
  field: Field,
  roomOfReadings: () => readonly Taken[],
): LimitLines {
  // Most plots have no limit, and then nobody asks where the readings lie.
  const readings = limits.length === 0 ? [] : roomOfReadings();
  const taken: Taken[] = [];
  const lines: Primitive[] = [];
  const names: Primitive[] = [];
  for (const limit of limits) {
    const at = y.place(limit.y);
    lines.push({
      kind: 'path',
      d: straight(field.left, at, field.right, at),
      stroke: { ink: 'ink', width: 0.9, dash: dashes(limit.line) },
    });
    const others = limits.map((other) => y.place(other.y)).filter((place) => Math.abs(place - at) > 0.5);
    const rooms = nameRooms(limit.name, at, field).filter(
      (room) => inField(room, field) && !taken.some((other) => overlaps(other, room)),
    );
    const clear = rooms.filter((room) => !others.some((place) => place > room.top && place < room.bottom));
    const room = clear.find((place) => !readings.some((reading) => overlaps(reading, place))) ?? clear[0] ?? rooms[0];
    if (room === undefined) continue;
    taken.push(room);
    names.push(...nameIn(room, limit.name));
  }
  return { lines, names, taken };
}

function nameIn(room: Taken, name: string): readonly Primitive[] {
  const { left, right, top, bottom } = room;
  const corners = [straight(left, top, right, top), straight(right, bottom, left, bottom).replace('M', 'L')].join('');
  return [
    { kind: 'path', d: corners + 'Z', fill: 'paper' },
    {
      kind: 'text',
      x: round((left + right) / 2),
      y: round(bottom - 2.5),
      text: name,
      size: labelSize,
      anchor: 'middle',
    },
  ];
}

function nameRooms(name: string, at: number, field: Field): readonly Taken[] {
  const width = textRoom(name, labelSize);
  const above = { top: at - labelSize - 4, bottom: at - 1 };
  const below = { top: at + 1, bottom: at + labelSize + 4 };
  const right = { left: field.right - width, right: field.right };
  const left = { left: field.left + 4, right: field.left + 4 + width };
  const middle = { left: (field.left + field.right - width) / 2, right: (field.left + field.right + width) / 2 };
  return [right, left, middle].flatMap((side) => [
    { ...side, ...above },
    { ...side, ...below },
  ]);
}

function inField(room: Taken, field: Field): boolean {
  const across = room.left >= field.left && room.right <= field.right + 0.5;
  return across && room.top >= field.top - 4 && room.bottom <= field.bottom;
}
