// The pen of the demo's drawings: a few strokes as SVG elements, with the lettering drawn as outlines so that no font of the machine matters.
import { createRequire } from 'node:module';
import { openSync } from 'fontkit';

/** One stroke, fill or line of lettering: SVG text. */
export type Mark = string;
export type Point = readonly [x: number, y: number];
type Attributes = Readonly<Record<string, string | number>>;

const face = createRequire(import.meta.url).resolve(
  '@expo-google-fonts/ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf',
);
const font = openSync(face);

const ink = '#111';
const thin = 3;

/** An SVG element; numbers go through String, which never rounds and never groups. */
export function element(name: string, attributes: Attributes, inside = ''): Mark {
  const written = Object.entries(attributes).map(([key, value]) => key + '="' + String(value) + '"');
  return '<' + [name, ...written].join(' ') + '>' + inside + '</' + name + '>';
}

/** A path in ink; `fill` is a grey or `none`. */
export function path(d: string, width = thin, fill = 'none'): Mark {
  return element('path', {
    d,
    fill,
    stroke: ink,
    'stroke-width': width,
    'stroke-linecap': 'round',
    'stroke-linejoin': 'round',
  });
}

const pair = (point: Point): string => point.map(String).join(' ');

/** Straight strokes from point to point. */
export function line(points: readonly Point[], width = thin, fill = 'none'): Mark {
  return path('M' + points.map(pair).join(' L'), width, fill);
}

/** A closed outline. */
export function shape(points: readonly Point[], fill = 'none', width = thin): Mark {
  return path('M' + points.map(pair).join(' L') + ' Z', width, fill);
}

export function circle([cx, cy]: Point, r: number, width = thin, fill = 'none'): Mark {
  return element('circle', { cx, cy, r, fill, stroke: ink, 'stroke-width': width });
}

export function box([x, y]: Point, width: number, height: number, fill = 'none', rx = 0): Mark {
  return element('rect', { x, y, width, height, rx, fill, stroke: ink, 'stroke-width': thin });
}

/** Equal strokes across a rectangle: fins, threads, planks, water. */
export function rungs(from: Point, to: Point, count: number, width = thin): Mark {
  const step = (to[1] - from[1]) / Math.max(1, count - 1);
  return Array.from({ length: count }, (_, n) =>
    line(
      [
        [from[0], from[1] + n * step],
        [to[0], from[1] + n * step],
      ],
      width,
    ),
  ).join('');
}

/** Lettering as outlines, its base line at `y`; `anchor` says which end stands at `x`. */
export function letters(text: string, [x, y]: Point, size: number, anchor: 'start' | 'middle' | 'end' = 'start'): Mark {
  const run = font.layout(text);
  const scale = size / font.unitsPerEm;
  const wide = run.advanceWidth * scale;
  const left = { start: x, middle: x - wide / 2, end: x - wide }[anchor];
  const starts = run.positions.map((_, n) =>
    run.positions.slice(0, n).reduce((sum, before) => sum + before.xAdvance, 0),
  );
  const glyphs = run.glyphs.map((glyph, n) =>
    element('path', { d: glyph.path.toSVG(), transform: 'translate(' + String(starts[n] ?? 0) + ' 0)' }),
  );
  const transform = 'translate(' + pair([left, y]) + ') scale(' + String(scale) + ' ' + String(-scale) + ')';
  return element('g', { transform, fill: ink, stroke: 'none' }, glyphs.join(''));
}

/** A label with a thin line to what it names. */
export function label(text: string, at: Point, to: Point, anchor: 'start' | 'middle' | 'end' = 'start'): Mark {
  const below = to[1] > at[1] ? 8 : -30;
  return letters(text, at, 26, anchor) + line([[at[0], at[1] + below], to], 2);
}

/** Moves and scales a group of marks. */
export function placed(marks: Mark, [x, y]: Point, scale = 1): Mark {
  return element('g', { transform: 'translate(' + pair([x, y]) + ') scale(' + String(scale) + ')' }, marks);
}

/** Turns a group of marks about a point, clockwise in degrees. */
export function turned(marks: Mark, degrees: number, about: Point): Mark {
  return element('g', { transform: 'rotate(' + [degrees, ...about].map(String).join(' ') + ')' }, marks);
}
