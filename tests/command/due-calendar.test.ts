// data/due.ics, read back by a parser that is not ours: one entry a due line with a day, whole days, the same bytes every time.
import ICAL from 'ical.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contentLines } from '../../src/binder/calendar-lines.ts';
import { dueCalendar } from '../../src/build.ts';
import { binderOf } from '../views/binder.ts';
import { makerFile, record, smallBinder } from '../views/small-folder.ts';

interface Entry {
  readonly uid: string;
  readonly summary: string;
  readonly description: string;
  readonly start: string;
  readonly days: number;
  readonly wholeDay: boolean;
  readonly stamp: string;
  readonly revision: number;
}
function entriesOf(text: string): readonly Entry[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const { uid, summary, description, startDate, duration } = new ICAL.Event(component);
    const stamp = String(component.getFirstPropertyValue('dtstamp'));
    expect(String(component.getFirstPropertyValue('last-modified'))).toBe(stamp);
    const revision = Number(component.getFirstPropertyValue('sequence'));
    return {
      uid,
      summary,
      description,
      start: startDate.toString(),
      wholeDay: startDate.isDate,
      days: duration.toSeconds() / 86_400,
      stamp,
      revision,
    };
  });
}

const services = makerFile(`services:
  - {id: hose, item: "Fuel hose; oil hose, both \\\\ of them", do: renew, every: 48 months}
  - {id: chain, item: Drive chain, do: adjust, every: 600 mi}
  - {id: shoes, item: Brake shoes, do: renew, wear: lining}
limits:
  - {id: lining, name: Brake lining, unit: mm, limit: 2.0 mm min}`);
const files = {
  'maker/book.yaml': services,
  'jobs/2026-04-01-all.md': record(
    'title: All done\ndate: 2026-04-01\nkind: service\nstate: done\nodometer: 1000 mi\nservices: [hose, chain]',
  ),
};

describe('the calendar of what is due', () => {
  const text = dueCalendar(smallBinder(files).book);
  it('has an entry of one whole day for a line with a date, and none for one without', () => {
    // The general schedule stands beside the maker's for what it does not speak of.
    const made = entriesOf(text).filter(({ description }) => !description.includes('General schedule'));
    expect(made).toEqual([
      expect.objectContaining({
        summary: String.raw`Fuel hose; oil hose, both \ of them: renew (Quilverne Tansy 197)`,
        start: '2030-04-01',
        wholeDay: true,
        days: 1,
        stamp: '2026-11-25T00:00:00Z',
      }),
    ]);
  });
  it('keeps the name of an entry when its date moves, and tells machines apart', () => {
    const later = {
      ...files,
      'jobs/2026-09-01-again.md': record('title: Hose\ndate: 2026-09-01\nkind: service\nstate: done\nservices: [hose]'),
    };
    const hose = (calendar: string) => entriesOf(calendar).find(({ uid }) => uid.startsWith('due-hose-'));
    const [before, after] = [hose(text), hose(dueCalendar(smallBinder(later).book))];
    expect(after?.start).toBe('2030-09-01');
    expect(after?.uid).toBe(before?.uid);
    const { book } = smallBinder(files);
    const { machine } = book.records;
    const numbers = machine.numbers.map((one) => ({ ...one, stamped: 'QT-1' }));
    const other = { ...book, records: { ...book.records, machine: { ...machine, numbers } } };
    expect(hose(dueCalendar(other))?.uid).not.toBe(before?.uid);
    expect(text).not.toContain('QT-20931');
  });
  it('is taken for the newer one on a later day', () => {
    const [first, later] = ['2026-11-14', '2026-11-15'].map(
      (day) => entriesOf(dueCalendar(binderOf('demo-bike', day).book))[0],
    );
    expect(later?.uid).toBe(first?.uid);
    expect(later?.revision).toBe((first?.revision ?? 0) + 1);
    expect((later?.stamp ?? '') > (first?.stamp ?? '')).toBe(true);
  });
  it('is of the demo machine one entry a line with a day, with its reason, in the same bytes every time', () => {
    const { book } = binderOf('demo-bike', '2026-11-14');
    const made = dueCalendar(book);
    const entries = entriesOf(made);
    const dated = book.due.filter(
      (line) => line.state !== 'done once' && (line.dueDay ?? line.projected?.likely) !== undefined,
    );
    expect(dated.length).toBeGreaterThan(10);
    expect(entries.length).toBe(dated.length);
    expect(new Set(entries.map(({ uid }) => uid)).size).toBe(entries.length);
    for (const [index, { why }] of dated.entries()) expect(entries[index]?.description).toContain(why);
    expect(dueCalendar(binderOf('demo-bike', '2026-11-14', (all) => all.toReversed()).book)).toBe(made);
  });
});

describe('its lines', () => {
  it('are never over 75 octets, end in CR LF, and say the same when they are put together again', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme', maxLength: 200 })), (values) => {
        const clean = values.map((value) => value.replaceAll(/\p{Cc}/gu, ''));
        const text = contentLines(clean.map((value) => ['SUMMARY', value]));
        const lines = text.split('\r\n');
        expect(lines.pop()).toBe('');
        for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
        expect(text.replaceAll('\r\n ', '')).toBe(clean.map((value) => `SUMMARY:${value}\r\n`).join(''));
      }),
    );
  });
});
