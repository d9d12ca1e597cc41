// What must be true of every page: nothing off the paper, nothing in the margins, no text over text, nothing too small.
import type { BoxItem, PlacedItem, PlacedPage, TextItem } from '../../src/layout/placed.ts';
import { drawPlot } from '../../src/plots/plot.ts';
import { widthOf } from '../../src/pdf/faces.ts';

export interface Rectangle {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const mm = 72 / 25.4;

/** The inked part of a text: from the height of its capitals to just below the baseline. */
export function inkOf(item: TextItem): Rectangle {
  return { left: item.x, right: item.x + item.width, top: item.y - item.size * 0.7, bottom: item.y + item.size * 0.15 };
}

export function texts(page: PlacedPage): readonly TextItem[] {
  return page.items.flatMap((item): readonly TextItem[] => {
    if (item.kind === 'text') return [item];
    if (item.kind === 'total')
      return [
        { kind: 'text', x: item.x, y: item.y, width: item.width, text: item.before, face: 'regular', size: item.size },
      ];
    if (item.kind !== 'plot') return [];
    return drawPlot(item.plot, item).flatMap((primitive): readonly TextItem[] => {
      if (primitive.kind !== 'text') return [];
      const face = primitive.strong ? 'strong' : 'regular';
      const width = widthOf(primitive.text, face) * primitive.size;
      const back = primitive.anchor === 'end' ? width : primitive.anchor === 'middle' ? width / 2 : 0;
      return [
        {
          kind: 'text',
          x: item.x + primitive.x - back,
          y: item.y + primitive.y,
          width,
          text: primitive.text,
          face,
          size: primitive.size,
        },
      ];
    });
  });
}

function extent(item: PlacedItem): Rectangle | undefined {
  switch (item.kind) {
    case 'text':
      return inkOf(item);
    case 'line':
      return {
        left: Math.min(item.x1, item.x2),
        right: Math.max(item.x1, item.x2),
        top: Math.min(item.y1, item.y2),
        bottom: Math.max(item.y1, item.y2),
      };
    case 'box':
    case 'fill':
    case 'photo':
    case 'plot':
      return { left: item.x, right: item.x + item.width, top: item.y, bottom: item.y + item.height };
    case 'tick':
      return { left: item.x, right: item.x + item.size, top: item.y, bottom: item.y + item.size };
    case 'circle':
      return {
        left: item.x - item.radius,
        right: item.x + item.radius,
        top: item.y - item.radius,
        bottom: item.y + item.radius,
      };
    case 'modules': {
      const far = Math.max(...item.runs.map((run) => Math.max(run.row + 1, run.start + run.length)));
      return { left: item.x, right: item.x + far * item.module, top: item.y, bottom: item.y + far * item.module };
    }
    case 'total':
      return { left: item.x, right: item.x + item.width, top: item.y - item.size, bottom: item.y };
    case 'anchor':
    case 'empty':
      return undefined;
  }
}

/** Sentences about what is wrong with a page; none is what is wanted. */
export function faults(page: PlacedPage): readonly string[] {
  const found: string[] = [];
  const edge = 6 * mm - 0.6;
  for (const item of page.items) {
    const place = extent(item);
    if (place === undefined) continue;
    if (![place.left, place.right, place.top, place.bottom].every(Number.isFinite))
      found.push('no number: ' + JSON.stringify(item));
    const out =
      place.left < edge || place.top < edge || place.right > page.width - edge || place.bottom > page.height - edge;
    if (out) found.push('in the unprintable edge: ' + describe(item));
    if (item.kind === 'fill' && item.grey > 0.15 && item.width > 4) found.push('too dark: ' + describe(item));
    if (item.kind === 'box') found.push(...boxFaults(item).map((fault) => fault + ': ' + describe(item)));
  }
  const all = texts(page);
  for (const item of all) if (item.size < 9) found.push('under 9 points: ' + item.text);
  for (const item of page.items) {
    if (item.kind !== 'text' || item.tag === undefined) continue;
    const ink = inkOf(item);
    const low = ink.bottom > page.frame.y + page.frame.height + 1;
    if (low || ink.top < page.frame.y - 1) found.push('outside the frame, upright: ' + describe(item));
    if (ink.left < page.frame.x - 0.5 || ink.right > page.width - edge)
      found.push('outside the frame, across: ' + describe(item));
  }
  found.push(...overlaps(all), ...crossed(all, page.items), ...lowRows(page.items));
  return found;
}

/** Boxes to tick of 5 to 6 mm, boxes to write in of at least 25 by 9 mm. */
function boxFaults({ use, width, height }: BoxItem): readonly string[] {
  const [across, down] = [width / mm, height / mm];
  if (use === 'tick' && (across < 5 || across > 6 || Math.abs(across - down) > 0.01))
    return ['a box to tick of another size'];
  if (use === 'write' && (across < 25 || down < 9)) return ['a box too small to write in'];
  return [];
}

/** Boxes to tick one under the other stand in rows of 8 mm or more: a glove and a greasy pen need that. */
function lowRows(items: readonly PlacedItem[]): readonly string[] {
  const ticks = items.filter((item) => item.kind === 'box').filter((box) => box.use === 'tick');
  const columns = new Map<number, BoxItem[]>();
  for (const tick of ticks) columns.set(Math.round(tick.x), [...(columns.get(Math.round(tick.x)) ?? []), tick]);
  return [...columns.values()].flatMap((column) => {
    const sorted = column.toSorted((a, b) => a.y - b.y);
    return sorted.flatMap((box, index) => {
      const above = sorted[index - 1];
      return above !== undefined && (box.y - above.y) / mm < 8 ? ['rows too low: ' + describe(box)] : [];
    });
  });
}

function overlaps(items: readonly TextItem[]): readonly string[] {
  const sorted = items.filter((item) => item.width > 0).toSorted((a, b) => inkOf(a).top - inkOf(b).top);
  return sorted.flatMap((item, index) => {
    const ink = inkOf(item);
    const found: string[] = [];
    for (let at = index + 1; at < sorted.length; at += 1) {
      const other = sorted[at];
      if (other === undefined || inkOf(other).top >= ink.bottom) break;
      if (share(ink, inkOf(other))) found.push('text over text: ' + describe(item) + ' / ' + describe(other));
    }
    return found;
  });
}

/** A text lies in a box or outside it, never across its edge. */
function crossed(items: readonly TextItem[], all: readonly PlacedItem[]): readonly string[] {
  const boxes = all.filter((item) => item.kind === 'box');
  return boxes.flatMap((box) =>
    items
      .filter((item) => {
        const ink = inkOf(item);
        const place = { left: box.x, right: box.x + box.width, top: box.y, bottom: box.y + box.height };
        const inside =
          ink.left >= place.left - 1 &&
          ink.right <= place.right + 1 &&
          ink.top >= place.top - 1 &&
          ink.bottom <= place.bottom + 1;
        return share(ink, place) && !inside;
      })
      .map((item) => 'text across a box: ' + describe(item) + ' / ' + describe(box)),
  );
}

function share(a: Rectangle, b: Rectangle): boolean {
  const air = 0.35;
  return a.left < b.right - air && b.left < a.right - air && a.top < b.bottom - air && b.top < a.bottom - air;
}

function describe(item: PlacedItem): string {
  const place = extent(item);
  const text = item.kind === 'text' ? item.text.slice(0, 40) : item.kind;
  return text + ' at ' + JSON.stringify(place);
}
