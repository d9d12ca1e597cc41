// Cards to cut out, several on a page, with cut marks at the corners and a hole to be punched. Sizes are in millimetres.
import type { CardsBlock } from '../../sheet/sheet.ts';
import { millimetre, unprintable } from '../paper.ts';
import type { PlacedItem } from '../placed.ts';
import { big, leading, least, small, text as textType, thin, type TypeSize } from '../scale.ts';
import { heightOf, setLines, type SetLine } from '../set-line.ts';
import { linesOf, under, type Setting } from '../setting.ts';
import type { Slab } from '../slab.ts';
import { drawModules, squareCode } from '../square-code.ts';

type Card = CardsBlock['cards'][number];

const inside = 4 * millimetre;
const holeRadius = 2.5 * millimetre;
const holeRoom = 12 * millimetre;

export function* cardsSlabs(block: CardsBlock, setting: Setting): Generator<Slab> {
  const width = Math.min(block.size.width * millimetre, setting.width);
  const height = Math.min(block.size.height * millimetre, setting.height);
  const across = Math.max(1, Math.floor((setting.width + setting.bleed + 0.5) / width));
  const size = { width, height, hole: block.hole, small: block.small === true, inside, cut: true, setting };
  const cards = block.cards.flatMap((card) => setCard(card, size));
  // Spare ones stand last; a row that holds no other is left out where it would begin a page.
  const asked = block.cards.filter((card) => card.spare !== true).flatMap((card) => setCard(card, size)).length;
  for (let from = 0; from < cards.length; from += across) {
    const row = cards.slice(from, from + across);
    yield {
      height,
      ...(from === 0 ? { before: leading } : {}),
      ...(from >= asked ? { spare: true } : {}),
      draw: (x, y, out) => {
        for (const [index, draw] of row.entries()) draw(x + index * width, y, out);
      },
    };
  }
}

/** The cards of a block, each to fill a side of `width` by `height` points by itself. */
export function singleCards(block: CardsBlock, width: number, height: number, setting: Setting): readonly Draw[] {
  // A card that lies on its side has little room.
  const small = block.small === true || width > height;
  const size = { width, height, hole: block.hole, small, inside: unprintable, cut: false, setting };
  return block.cards.flatMap((card) => setCard(card, size));
}

interface Size {
  readonly width: number;
  readonly height: number;
  readonly hole: boolean;
  readonly small: boolean;
  /** White between the edge and the text. */
  readonly inside: number;
  /** Cut out of a larger leaf, with marks for it. */
  readonly cut: boolean;
  readonly setting: Setting;
}
export type Draw = (x: number, y: number, out: PlacedItem[]) => void;

/** A card, and further cards with what did not fit on the first. */
function setCard(card: Card, size: Size): readonly Draw[] {
  const { setting, inside } = size;
  const room = size.width - 2 * inside;
  const corner = holeAtCorner(size);
  const holeAbove = size.hole && !corner ? holeRoom : 0;
  const code = card.code === undefined ? undefined : squareCode(card.code, Math.min(20 * millimetre, room / 3));
  const titleRoom = room - (code === undefined ? 0 : code.side + 4) - (corner ? 2 * holeRadius + 4 : 0);
  const foot = card.foot === undefined ? [] : linesOf(card.foot, size.small ? least : small, room, setting).slice(0, 2);
  const titles = [card.title, card.title + ' (continued)'].map((title) =>
    linesOf(title, size.small ? textType : big, titleRoom, setting, 'strong').slice(0, 3),
  );
  const head = Math.max(...titles.map(heightOf), code?.side ?? 0);
  const free = size.height - 2 * inside - holeAbove - head - 4 - heightOf(foot);
  const type = size.small ? least : textType;
  const entries = card.lines.map((line) => linesOf(line, type, room, setting));
  const parts = inParts(entries, free, type);
  return parts.map((part, index) => (x, y, out) => {
    drawCut(x, y, size, out);
    const tag = under(setting.section, 'P');
    const top = y + inside + holeAbove;
    const titleLines = titles[index === 0 ? 0 : 1] ?? [];
    setLines(titleLines, { x: x + inside, y: top, width: titleRoom, tag }, out);
    if (code !== undefined)
      drawModules(code, x + inside + titleRoom + 4, top, under(setting.section, 'Figure', { alt: code.alt }), out);
    setLines(part, { x: x + inside, y: top + head + 4, width: room, tag }, out);
    setLines(foot, { x: x + inside, y: y + size.height - inside - heightOf(foot), width: room, tag }, out);
  });
}

/** A card that lies on its side has its hole in the corner, beside the title. */
function holeAtCorner(size: Size): boolean {
  return size.hole && size.width > size.height;
}

/** An entry of a few lines stays whole; one that is longer than a card goes on from card to card. */
function inParts(
  entries: readonly (readonly SetLine[])[],
  room: number,
  type: TypeSize,
): readonly (readonly SetLine[])[] {
  const count = Math.max(1, Math.floor(room / type.leading));
  const parts: SetLine[][] = [[]];
  for (const entry of entries) {
    const part = parts.at(-1) ?? [];
    const whole = part.length + entry.length <= count;
    if (!whole && part.length > 0 && entry.length <= count) parts.push([]);
    for (const line of entry) addLine(parts, line, count);
  }
  return parts;
}

function addLine(parts: SetLine[][], line: SetLine, count: number): void {
  const part = parts.at(-1);
  if (part === undefined || part.length >= count) parts.push([line]);
  else part.push(line);
}

/** Short marks at the corners, a dotted outline between them, and the hole. */
function drawCut(x: number, y: number, size: Size, out: PlacedItem[]): void {
  const { width, height } = size;
  if (!size.cut) {
    drawHole(x, y, size, out);
    return;
  }
  const mark = 3 * millimetre;
  out.push({ kind: 'box', x, y, width, height, weight: thin, use: 'cut' });
  for (const [cx, sx] of [
    [x, 1],
    [x + width, -1],
  ] as const) {
    for (const [cy, sy] of [
      [y, 1],
      [y + height, -1],
    ] as const) {
      out.push({ kind: 'line', x1: cx, y1: cy, x2: cx + sx * mark, y2: cy, weight: 0.8 });
      out.push({ kind: 'line', x1: cx, y1: cy, x2: cx, y2: cy + sy * mark, weight: 0.8 });
    }
  }
  drawHole(x, y, size, out);
}

function drawHole(x: number, y: number, size: Size, out: PlacedItem[]): void {
  if (!size.hole) return;
  const { width, inside } = size;
  const across = holeAtCorner(size) ? width - inside - holeRadius : width / 2;
  out.push({ kind: 'circle', x: x + across, y: y + inside + holeRadius, radius: holeRadius, weight: 0.6 });
}
