// How much room a text takes, without a font at hand: a generous estimate, so that nothing is set too close.

/** Rectangle already used by a text. */
export interface Taken {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Latin, Greek, Cyrillic and signs: what the typefaces of the paper have, but for a few. */
const drawn: readonly (readonly [from: number, to: number])[] = [
  [0x20, 0x7e],
  [0xa0, 0x2e9],
  [0x370, 0x52f],
  [0x1e00, 0x26ff],
];

/**
 * Width in points of a text at a size: six tenths of the size a character is wider than the face sets it. A character that no
 * typeface has is printed as its number, `U+65E5`, and takes the room of that.
 */
export function textRoom(text: string, size: number): number {
  return Array.from(text).reduce((room, character) => room + ems(character.codePointAt(0) ?? 0), 0) * size;
}

function ems(code: number): number {
  if (drawn.some(([from, to]) => code >= from && code <= to)) return 0.6;
  return code > 0xffff ? 5.2 : 4.4;
}

/** A text cut to a width with a visible mark. */
export function cutToRoom(text: string, size: number, width: number): string {
  if (textRoom(text, size) <= width) return text;
  const letters = Array.from(text);
  let kept = letters.length - 1;
  while (kept > 1 && textRoom(letters.slice(0, kept).join('') + '…', size) > width) kept -= 1;
  return letters.slice(0, kept).join('') + '…';
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
