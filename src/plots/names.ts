// The names of the series in lines above the field: mark, a piece of its line, name. One series alone needs none.
import type { PlotBlock } from '../sheet/sheet.ts';
import { labelSize, round, straight } from './axes.ts';
import { dashes } from './dashes.ts';
import type { Primitive } from './primitive.ts';
import { cutToRoom, textRoom } from './room.ts';
import { markSize } from './series.ts';

const key = 22;
const gap = 14;
const lineHeight = 13;

/** Share of a plot's height that whole names may take. */
export const mostNames = 0.3;

export interface SeriesNames {
  readonly drawn: readonly Primitive[];
  readonly height: number;
}

/**
 * Sets the names from left to right, on further lines where the width ends; `top` is the top of the first line. Names are whole where that
 * takes no more than `room`; else each is cut to a line, for the field below needs its height.
 */
export function seriesNames(series: PlotBlock['series'], width: number, top: number, room: number): SeriesNames {
  if (series.length < 2) return { drawn: [], height: 0 };
  const whole = setNames(series, width, top, (name) => inLines(name, width - key));
  return whole.height <= room
    ? whole
    : setNames(series, width, top, (name) => [cutToRoom(name, labelSize, width - key)]);
}

function setNames(
  series: PlotBlock['series'],
  width: number,
  top: number,
  linesOf: (name: string) => readonly string[],
): SeriesNames {
  const drawn: Primitive[] = [];
  let x = 0;
  let line = 0;
  for (const one of series) {
    const [name = '', ...more] = linesOf(one.name);
    const room = key + textRoom(name, labelSize);
    if (x > 0 && (x + room > width || more.length > 0)) {
      x = 0;
      line += 1;
    }
    const base = top + line * lineHeight + labelSize;
    const middle = base - 3;
    if (one.line !== 'none') {
      const stroke = { ink: 'ink', width: 0.9, dash: dashes(one.line) } as const;
      drawn.push({ kind: 'path', d: straight(x, middle, x + key - 5, middle), stroke });
    }
    drawn.push({ kind: 'dot', x: round(x + (key - 5) / 2), y: round(middle), size: markSize, mark: one.mark });
    for (const [at, text] of [name, ...more].entries()) {
      const y = round(base + at * lineHeight);
      drawn.push({ kind: 'text', x: round(x + key), y, text, size: labelSize, anchor: 'start' });
    }
    x += room + gap;
    line += more.length;
    // Below a name on several lines there is no telling whose a further one would be.
    if (more.length > 0) x = width;
  }
  return { drawn, height: (line + 1) * lineHeight };
}

/** A name in as many lines as it takes; a word that is longer than a line is cut. */
function inLines(name: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of name.split(' ')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last === undefined || textRoom(longer, labelSize) > width) lines.push(cutToRoom(word, labelSize, width));
    else lines[lines.length - 1] = longer;
  }
  return lines;
}
