// How views word dates, torques, fasteners and long tables.
import { describe, expect, test } from 'vitest';
import { readDaySpan } from '../../src/quantity/day-arithmetic.ts';
import { written } from '../../src/figure/print.ts';
import type { Figure } from '../../src/figure/figure.ts';
import { readQuantity } from '../../src/quantity/read-quantity.ts';
import { anchor, joined } from '../../src/views/wording/blocks.ts';
import { capped } from '../../src/views/wording/capped.ts';
import { dayText, looseDateText, spanText, withDates, withLastDay } from '../../src/views/wording/day.ts';
import { withJobs } from '../../src/views/wording/job.ts';
import { seriesPlot } from '../../src/views/wording/series-plot.ts';
import { stagesText, torqueAsWritten, torqueInOtherUnits } from '../../src/views/wording/torque.ts';
import { binderOf, day } from './binder.ts';

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');
const { book } = binderOf('demo-bike', '2026-11-21');

function torque(text: string): Figure<'torque'> {
  const read = readQuantity(text, 'torque');
  if (!read.ok) throw new Error(`not a torque: ${text}`);
  return written(read.value, { file: 'maker/book.yaml', path: [] });
}

describe('dates', () => {
  test.each([
    ['2024-05-04', '4 May 2024'],
    ['2024-05-04 to 2024-05-05', '4 to 5 May 2024'],
    ['2024-04-28 to 2024-05-02', '28 April to 2 May 2024'],
    ['2023-12-30 to 2024-01-02', '30 December 2023 to 2 January 2024'],
    ['2024-05', 'May 2024'],
  ])('%s is read aloud as %s', (text, said) => {
    const read = readDaySpan(text);
    expect(read.ok ? spaced(spanText(read.value)) : read.why).toBe(said);
  });
  test('behind the title of a record, which stays as it was written', () => {
    expect(spaced(withLastDay('read last: Notes of 2024-05-04, 2026-09-19, right'))).toBe(
      'read last: Notes of 2024-05-04, 19 September 2026, right',
    );
  });
  test('in sentences of the book and on papers', () => {
    expect(spaced(withDates('by date on 2026-08-06, 97 days over'))).toBe('by date on 6 August 2026, 97 days over');
    expect(spaced(looseDateText('1969-05'))).toBe('May 1969');
    expect(looseDateText('about 1969')).toBe('about 1969');
    expect(spaced(dayText(day('2024-10-09')))).toBe('9 October 2024');
  });
});

describe('torques', () => {
  test('pound-feet first where the writer gave them', () => {
    const value = { low: torque('9 lbf·ft'), high: torque('11 lbf·ft') };
    expect(spaced(torqueAsWritten(value, 'metric'))).toBe('9 to 11 lbf·ft');
    expect(torqueInOtherUnits(value, 'metric').map(spaced)).toEqual(['12.2 to 14.9 N·m', '1.24 to 1.52 kgf·m']);
  });
  test('a worked-out band in the unit of the machine', () => {
    const working = { calculation: 'x', formula: '', inputs: [], source: '' };
    const value = { low: { ...torque('4.0 N·m'), origin: { kind: 'worked out', working } as const } };
    expect(spaced(torqueAsWritten(value, 'metric'))).toBe('4.0 N·m');
    expect(spaced(torqueAsWritten(value, 'imperial'))).toBe('3.0 lbf·ft');
    expect(torqueInOtherUnits(value, 'imperial').map(spaced)).toEqual(['4.0 N·m', '0.41 kgf·m']);
  });
  test('stages share a unit where they have one', () => {
    expect(spaced(stagesText([torque('1.1 kgf·m'), torque('2.2 kgf·m')]))).toBe('1.1, then 2.2 kgf·m');
    expect(spaced(stagesText([torque('10 N·m'), torque('2.2 kgf·m')]))).toBe('10 N·m, then 2.2 kgf·m');
    expect(stagesText([])).toBe('');
  });
});

describe('lines', () => {
  test('pieces that are not there leave no separator', () => {
    expect(joined(['a', undefined, '', 'b'])).toBe('a; b');
    expect(joined([[{ kind: 'strong', text: 'a' }], 'b'], ', ')).toEqual([{ kind: 'strong', text: 'a' }, ', ', 'b']);
  });
  test('anchors are plain', () => {
    expect(anchor('part', 'Räder & Reifen / vorn')).toBe('part-ra-der-reifen-vorn');
    expect(anchor('??')).toBe('part');
  });
  test('a record named by its id is named by its title and led to', () => {
    const [job] = book.records.jobs;
    if (job === undefined) throw new Error('no record');
    expect(withJobs(book, `answered in ${job.id}`)).toEqual([
      'answered in ',
      { kind: 'link', text: job.title, to: `job:${job.id}` },
    ]);
    expect(withJobs(book, 'open since 1999-01-01-nothing')).toEqual(['open since ', '1999-01-01-nothing']);
    expect(withJobs(book, 'open')).toBe('open');
  });
  test('a long table stops and says how much it leaves away', () => {
    const rows = Array.from({ length: 450 }, (_, index) => index);
    const cut = capped(rows, (rest) => `${String(rest)} more`);
    expect(cut.length).toBe(401);
    expect(cut.at(-1)).toEqual({ kind: 'band', text: '50 more' });
    expect(capped(rows.slice(0, 400), () => 'none')).toEqual(rows.slice(0, 400));
  });
});

describe('plots of readings', () => {
  const series = (item: string) => {
    const found = book.series.find((one) => one.item === item);
    if (found === undefined) throw new Error(`no readings of ${item}`);
    return found;
  };
  test('many positions become the largest and the smallest of each day', () => {
    // The demo has bores of two days; a plot asks for a third.
    const bore = series('bore');
    const third = bore.points
      .filter((point) => point.side === 'left')
      .map((point) => ({ ...point, day: day('2026-11-20') }));
    expect(seriesPlot((words) => words, bore)).toBeUndefined();
    const plot = seriesPlot((words) => words, { ...bore, points: [...bore.points, ...third] });
    expect(plot?.series.map((one) => one.name.split(';')[0])).toEqual(
      expect.arrayContaining(['largest of all positions', 'smallest of all positions']),
    );
    expect(plot?.series.length).toBeLessThanOrEqual(8);
    for (const one of plot?.series ?? [])
      expect(new Set(one.points.map((point) => point.x)).size).toBe(one.points.length);
  });
  test('a corrected reading is not drawn', () => {
    const corrected = book.series.find((one) => one.points.some((point) => point.corrected !== undefined));
    if (corrected === undefined) throw new Error('the demo has no correction');
    const drawn = seriesPlot((words) => words, corrected)?.series.flatMap((one) => one.points).length ?? 0;
    const plain = corrected.points.filter(
      (point) => point.value.kind === 'read' && point.corrected === undefined,
    ).length;
    expect(drawn).toBe(plain);
  });
  test('one day alone is no plot', () => {
    const [point] = series('compression').points;
    if (point === undefined) throw new Error('no reading');
    expect(seriesPlot((words) => words, { ...series('compression'), points: [point] })).toBeUndefined();
  });
});
