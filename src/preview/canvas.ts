// What an SVG is gathered on: strokes of one weight as one path, letters of one size as one group, so that a page stays a few thousand characters.
import type { Face } from '../layout/placed.ts';

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Canvas {
  /** A place as it stands in a path. */
  readonly at: (x: number, y: number) => string;
  /** Letters with their baseline at a place, in a width where it is known. */
  readonly text: (text: string, face: Face, size: number, x: number, y: number, width: number | undefined) => void;
  /** A grey bar in the place of letters. */
  readonly bar: (x: number, y: number, width: number, size: number) => void;
  /** Path data, drawn with a weight in points. */
  readonly stroke: (d: string, weight: number, dashed: boolean) => void;
  readonly line: (x1: number, y1: number, x2: number, y2: number, weight: number, dashed: boolean) => void;
  readonly box: (box: Rectangle, weight: number, dashed: boolean) => void;
  /** `grey` is a share of black. */
  readonly fill: (box: Rectangle, grey: number) => void;
  readonly circle: (x: number, y: number, radius: number, weight: number) => void;
  /** Dark modules of a square code that follow each other in a row. */
  readonly module: (x: number, y: number, width: number, height: number) => void;
  readonly end: () => string;
}

const faces: Record<Face, string> = { regular: '', strong: ' font-weight="600"', em: ' font-style="italic"' };

/** An empty page of a size in points. */
export function canvas(width: number, height: number): Canvas {
  const strokes = new Map<string, string>();
  const groups = new Map<string, string>();
  const fills = new Map<string, string>();
  const add = (to: Map<string, string>, key: string, more: string): void =>
    void to.set(key, (to.get(key) ?? '') + more);
  const at = (x: number, y: number): string => `${short(x)} ${short(y)}`;
  const stroke: Canvas['stroke'] = (d, weight, dashed) => {
    // Hairlines keep their breadth on the screen however small the picture is.
    const breadth = weight < 0.6 ? 0.3 : weight < 1.2 ? 0.5 : 0.9;
    add(strokes, `stroke-width="${String(breadth)}"${dashed ? ' stroke-dasharray="1 2"' : ''}`, d);
  };
  const rectangle = ({ x, y, width: w, height: h }: Rectangle): string =>
    `M${at(x, y)}H${short(x + w)}V${short(y + h)}H${short(x)}Z`;
  return {
    at,
    stroke,
    text: (text, face, size, x, y, wide) => {
      const shown = escaped(text.trimEnd());
      if (shown === '') return;
      const fitted = wide === undefined ? '' : ` textLength="${short(wide)}" lengthAdjust="spacingAndGlyphs"`;
      add(
        groups,
        `font-size="${short(size)}"${faces[face]}`,
        `<text x="${short(x)}" y="${short(y)}"${fitted}>${shown}</text>`,
      );
    },
    bar: (x, y, wide, size) => add(fills, '#999', rectangle({ x, y: y - size * 0.5, width: wide, height: size * 0.5 })),
    line: (x1, y1, x2, y2, weight, dashed) => stroke(`M${at(x1, y1)}L${at(x2, y2)}`, weight, dashed),
    box: (box, weight, dashed) => stroke(rectangle(box), weight, dashed),
    fill: (box, grey) => add(fills, greyOf(grey), rectangle(box)),
    circle: (x, y, r, weight) => {
      const half = `a${short(r)} ${short(r)} 0 1 0 `;
      stroke(`M${at(x - r, y)}${half}${short(2 * r)} 0${half}${short(-2 * r)} 0`, weight, false);
    },
    module: (x, y, w, h) => add(fills, '#000', rectangle({ x, y, width: w, height: h })),
    end: () =>
      [
        `<svg xmlns="http://www.w3.org/2000/svg" width="${short(width)}" height="${short(height)}" viewBox="0 0 ${at(width, height)}">`,
        `<path fill="#fff" d="${rectangle({ x: 0, y: 0, width, height })}"/>`,
        ...[...fills].map(([colour, d]) => `<path fill="${colour}" d="${d}"/>`),
        '<g fill="none" stroke="#000">',
        ...[...strokes].map(([how, d]) => `<path ${how} vector-effect="non-scaling-stroke" d="${d}"/>`),
        '</g><g font-family="IBM Plex Sans, Noto Sans, DejaVu Sans, sans-serif">',
        ...[...groups].map(([how, texts]) => `<g ${how}>${texts}</g>`),
        '</g></svg>\n',
      ].join(''),
  };
}

/** A tenth of a point is less than a dot of any screen at this size. */
function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function greyOf(share: number): string {
  const level = Math.round(255 * (1 - share));
  return '#' + level.toString(16).padStart(2, '0').repeat(3);
}

/** A text as it stands in markup; what no markup may hold is left out. */
function escaped(text: string): string {
  const allowed = text.replaceAll(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '');
  return allowed.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
