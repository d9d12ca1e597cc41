// How much room a text takes, without a font at hand: a generous estimate, so that nothing is set too close.

/** Rectangle already used by a text. */
export interface Taken {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Width in points of a text at a size: six tenths of the size a character is wider than the face sets it. */
export function textRoom(text: string, size: number): number {
  return Array.from(text).length * size * 0.6;
}

/** Whether two rectangles share any area. */
export function overlaps(a: Taken, b: Taken): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Side of the cells that rectangles are sorted into, in points: about the height of two labels. */
const cell = 24;

/** Many rectangles asked about at once: only those near by are compared, since a long series has thousands. */
export interface RoomIndex {
  readonly add: (room: Taken) => void;
  readonly isFree: (room: Taken) => boolean;
}

/** An index of rectangles that are taken. */
export function roomIndex(rooms: readonly Taken[]): RoomIndex {
  const cells = new Map<string, Taken[]>();
  const add = (room: Taken): void => {
    for (const key of cellsOf(room)) {
      const there = cells.get(key);
      if (there === undefined) cells.set(key, [room]);
      else there.push(room);
    }
  };
  for (const room of rooms) add(room);
  const isFree = (room: Taken): boolean =>
    !cellsOf(room).some((key) => cells.get(key)?.some((other) => overlaps(other, room)) === true);
  return { add, isFree };
}

function cellsOf(room: Taken): readonly string[] {
  const keys: string[] = [];
  for (let column = Math.floor(room.left / cell); column <= Math.floor(room.right / cell); column += 1) {
    for (let row = Math.floor(room.top / cell); row <= Math.floor(room.bottom / cell); row += 1) {
      keys.push([column, row].join(' '));
    }
  }
  return keys;
}
