// Plots as primitives: readings in their places, lines told apart by pattern, text that never meets other text.
import { describe, expect, it } from 'vitest';
import { drawPlot, type Primitive } from '../../src/plots/plot.ts';
import { textRoom } from '../../src/plots/room.ts';
import type { PlotBlock } from '../../src/sheet/sheet.ts';
import { plot } from '../pdf/sample-plot.ts';

const size = { width: 480, height: 200 };
const dots = (primitives: readonly Primitive[]): readonly Extract<Primitive, { kind: 'dot' }>[] =>
  primitives.flatMap((one) => (one.kind === 'dot' ? [one] : []));
const words = (primitives: readonly Primitive[]): readonly string[] =>
  primitives.flatMap((one) => (one.kind === 'text' ? [one.text] : []));

function plotWith(more: Partial<PlotBlock>): PlotBlock {
  return { ...plot, ...more };
}

describe('drawPlot', () => {
  it('gives the same primitives twice', () => {
    expect(drawPlot(plot, size)).toEqual(drawPlot(plot, size));
  });

  it('places a later reading to the right and a greater one higher', () => {
    const one = plotWith({ series: plot.series.slice(0, 1) });
    const marks = dots(drawPlot(one, size));
    expect(marks).toHaveLength(4);
    const xs = marks.map((mark) => mark.x);
    const ys = marks.map((mark) => mark.y);
    expect(xs).toEqual(xs.toSorted((a, b) => a - b));
    expect(ys).toEqual(ys.toSorted((a, b) => b - a));
  });

  it('marks no half of a thing where things are counted, and parts of a unit where they were measured', () => {
    const of = (ys: readonly number[]): readonly string[] => {
      const points = ys.map((y, at) => ({ x: 20_000 + 40 * at, y }));
      const series = [{ name: 'a', mark: 'dot', line: 'solid', points }] as const;
      return words(drawPlot(plotWith({ x: { label: 'date', kind: 'day' }, limits: [], series }), size));
    };
    expect(of([0, 1, 0, 1]).filter((word) => word.includes('.'))).toEqual([]);
    expect(of([0, 1.5, 0, 1]).filter((word) => word.includes('.')).length).toBeGreaterThan(0);
  });

  it('keeps the distances of readings in proportion', () => {
    const points = [0, 10, 30].map((x) => ({ x, y: x }));
    const block = plotWith({
      x: { label: 'km', kind: 'number' },
      limits: [],
      series: [{ name: 'a', mark: 'dot', line: 'solid', points }],
    });
    const [a, b, c] = dots(drawPlot(block, size));
    expect(((c?.x ?? 0) - (b?.x ?? 0)) / ((b?.x ?? 0) - (a?.x ?? 0))).toBeCloseTo(2, 1);
    expect(((c?.y ?? 0) - (b?.y ?? 0)) / ((b?.y ?? 0) - (a?.y ?? 0))).toBeCloseTo(2, 1);
  });

  it('sets a long name of a series on several lines, and cuts none of its words', () => {
    const names = ['left; cold, oiled; piston +0.50 left fitted', 'right; cold, dry; piston +0.50 left fitted'];
    const series = names.map((name) => ({ ...plot.series[0], name, mark: 'dot', line: 'solid', points: [] }) as const);
    const said = words(drawPlot(plotWith({ series }), { width: 200, height: 220 })).join(' ');
    for (const name of names) expect(said).toContain(name);
    expect(said).not.toContain('…');
  });

  it('always takes in the limits and names them', () => {
    const far = plotWith({ limits: [{ name: 'limit', y: 99, line: 'dashed' }] });
    expect(words(drawPlot(far, size))).toContain('limit');
    const paths = drawPlot(far, size).flatMap((one) =>
      one.kind === 'path' && one.stroke?.dash?.length === 2 && one.stroke.dash[0] === 5 ? [one.d] : [],
    );
    expect(paths.length).toBeGreaterThan(0);
    const y = Number(/ ([\d.]+)L/.exec(paths[0] ?? '')?.[1]);
    expect(y).toBeGreaterThan(10);
    expect(y).toBeLessThan(60);
  });

  it('writes decimals as the distance of the ticks asks, and days as ISO dates', () => {
    const all = words(drawPlot(plot, size));
    expect(all).toContain('50.02');
    expect(all.some((word) => /^20\d\d-\d\d$/.test(word))).toBe(true);
  });

  it('parts thousands by a thin space from five digits and writes a true minus', () => {
    const points = [
      { x: 0, y: -20_000 },
      { x: 1, y: 20_000 },
    ];
    const block = plotWith({
      x: { label: 'n', kind: 'number' },
      limits: [],
      series: [{ name: 'a', mark: 'dot', line: 'none', points }],
    });
    const all = words(drawPlot(block, size));
    expect(all).toContain('\u221220\u202f000');
    expect(all.filter((word) => /\d,\d/.test(word))).toEqual([]);
  });

  it('draws nothing that is not a number, and an empty plot without failing', () => {
    const none = plotWith({ series: [{ name: 'a', mark: 'cross', line: 'solid', points: [] }], limits: [] });
    expect(dots(drawPlot(none, size))).toHaveLength(0);
    const odd = plotWith({
      series: [
        {
          name: 'a',
          mark: 'dot',
          line: 'solid',
          points: [
            { x: Number.NaN, y: 1 },
            { x: 1, y: 2 },
          ],
        },
      ],
    });
    expect(JSON.stringify(drawPlot(odd, size))).not.toMatch(/NaN|null/);
  });

  it('never sets two labels over each other, on any width', () => {
    for (let width = 140; width < 520; width += 17) {
      const texts = drawPlot(plot, { width, height: 180 }).flatMap((one) => (one.kind === 'text' ? [one] : []));
      const rooms = texts.map((text) => {
        const room = textRoom(text.text, text.size) * 0.86;
        const left = text.anchor === 'end' ? text.x - room : text.anchor === 'middle' ? text.x - room / 2 : text.x;
        return { left, right: left + room, top: text.y - text.size * 0.72, bottom: text.y, text: text.text };
      });
      const met = rooms.flatMap((a, index) =>
        rooms
          .slice(index + 1)
          .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
          .map((b) => a.text + ' / ' + b.text),
      );
      expect(met, 'width ' + String(width)).toEqual([]);
    }
  });
});
