// Readings in few words: positions as a grid, the verdict of many, the way to the limit, the last readings at a glance.
import { describe, expect, test } from 'vitest';
import type { SeriesPoint } from '../../src/book/book.ts';
import { lastPoints, summaryTable } from '../../src/views/measurement-summary.ts';
import { seriesGrid } from '../../src/views/series-grid.ts';
import { positionGrid } from '../../src/views/wording/positions.ts';
import { nearestToLimit, roomText } from '../../src/views/wording/to-limit.ts';
import { verdictsText } from '../../src/views/wording/verdicts.ts';
import { binderOf } from './binder.ts';

const say = (words: string): string => words;
const { book } = binderOf('demo-bike', '2026-11-14');
const series = (item: string) => {
  const found = book.series.find((one) => one.item === item);
  if (found === undefined) throw new Error(`no readings of ${item}`);
  return found;
};
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('positions', () => {
  test('few stand side by side', () => {
    expect(positionGrid(['left', 'right', 'left'])).toMatchObject({ lines: [''], columns: ['left', 'right'] });
  });
  test('twelve regular ones are parted by their leading word', () => {
    const heights = ['top', 'middle', 'bottom'].flatMap((height) => [`${height} fore-aft`, `${height} across`]);
    const grid = positionGrid(['left', 'right'].flatMap((side) => heights.map((height) => `${side} ${height}`)));
    expect(grid).toMatchObject({ lines: ['left', 'right'], columns: heights });
    expect(grid?.placeOf('right top across')).toEqual({ line: 'right', column: 'top across' });
  });
  test('many that are not regular make no grid', () => {
    expect(positionGrid(['a 1', 'a 2', 'a 3', 'a 4', 'b 1', 'c 9', 'd 5', 'e 6', 'f 7'])).toBeUndefined();
  });
});

describe('verdicts of several readings', () => {
  const [point] = series('bore').points;
  if (point === undefined) throw new Error('the demo has no bore');
  const at = (position: string, verdict: SeriesPoint['verdict']): SeriesPoint => {
    const { verdict: _old, ...rest } = point;
    return { ...rest, position, ...(verdict === undefined ? {} : { verdict }) };
  };
  test('what all share is said once', () => {
    expect(verdictsText(say, [at('left', 'within standard'), at('right', 'within standard')])).toBe('within standard');
    expect(verdictsText(say, [at('left', undefined)])).toBe('');
  });
  test('the worst comes first, with its place, or with how many', () => {
    const two = [at('left', 'within standard'), at('right', 'past the limit')];
    expect(verdictsText(say, two)).toBe('past the limit: right');
    const more = ['a', 'b', 'c'].map((name) => at(name, 'worn, usable'));
    expect(verdictsText(say, [...more, at('d', 'within standard')])).toBe('worn, usable: 3 of 4');
  });
});

describe('the last readings', () => {
  const bored = binderOf('demo-bike', '2026-11-14', (files) => [
    ...files,
    {
      file: 'jobs/2026-10-01-bored-again.md',
      text: [
        '---',
        'title: Bored again',
        'date: 2026-10-01',
        'kind: machining',
        'state: done',
        'repairs: [{of: bore, now: oversize 1.00 mm, standard: 51.00 to 51.02 mm, limit: 51.10 mm max}]',
        '---',
        '',
      ].join('\n'),
    },
  ]).book;
  const verdictOf = (item: string, from = book): string => {
    const one = from.series.filter((series) => series.item === item);
    const [row] = summaryTable({ book: { ...from, series: one }, say, options: {}, prose: () => [] }, () => 'x').rows;
    const text = row?.kind === 'cells' ? row.cells.at(-1)?.text : undefined;
    return plain(typeof text === 'string' ? text : JSON.stringify(text));
  };
  test('are not judged by the bounds of a bore that was made after them', () => {
    expect(verdictOf('bore')).toMatch(/within standard|worn, usable/u);
    expect(verdictOf('bore', bored)).toBe('not read since 1 October 2026: oversize 1.00 mm');
    expect(verdictOf('ring-end-gap', bored)).toBe(verdictOf('ring-end-gap'));
  });
});

describe('the way to the limit', () => {
  test('is told for the reading that is nearest to it', () => {
    const compression = series('compression');
    const last = lastPoints(compression);
    const nearest = nearestToLimit(compression, last);
    expect(nearest?.point.position).toBe('right');
    expect(nearest === undefined ? '' : plain(roomText(say, compression, nearest))).toBe('0.8 bar');
  });
  test('says when the limit is passed', () => {
    const bore = series('bore');
    const [first] = bore.points;
    if (first === undefined || bore.limit?.limit?.high === undefined) throw new Error('the bore has no limit');
    const low = {
      ...bore.limit.limit,
      high: first.value.kind === 'read' ? first.value.written.quantity : bore.limit.limit.high,
    };
    const passed = { ...bore, limit: { ...bore.limit, limit: low } };
    const largest = bore.points.filter((point) => point.job !== first.job);
    const nearest = nearestToLimit(passed, largest);
    expect(nearest === undefined ? '' : plain(roomText(say, passed, nearest))).toMatch(/^0\.\d\d mm past$/);
  });
  test('every reading of a series stands in its grid', () => {
    for (const one of book.series) {
      const { rows, columns } = seriesGrid({ book, say, options: {}, prose: () => [] }, one);
      const cells = rows.flatMap((row) => (row.kind === 'cells' ? row.cells : []));
      for (const row of rows) expect(row.kind === 'cells' ? row.cells.length : 0, one.item).toBe(columns.length);
      const texts = cells.map((cell) => JSON.stringify(cell.text ?? ''));
      for (const { value } of one.points) {
        const number = value.kind === 'read' ? (/^[\d.]+/.exec(value.written.text)?.[0] ?? '') : '';
        expect(
          texts.some((text) => text.includes(number)),
          `${one.item} ${number}`,
        ).toBe(true);
      }
    }
  });
});
