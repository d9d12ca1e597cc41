// Wires and earths measured again: a box of the sheet goes to a reading of the job, and stands on the next sheet with its day.
import { expect, test } from 'vitest';
import { withGiven } from '../../src/entry/given-in-record.ts';
import { blanksOfAll } from '../../src/entry/blanks-of.ts';
import { writeAnswers } from '../../src/entry/write-answers.ts';
import { machineFile, record, sheetSays, smallBinder } from '../views/small-folder.ts';
import { day } from '../views/binder.ts';

const wiring = `splitpin: 1
read: 2026-01-17
wires:
  - {id: coil-feed, colours: black, from: ignition switch, to: coil, through: 0.3 Ω}
earths:
  - {id: tail-earth, name: Tail lamp body, on: stop lamp, drop: 0.21 V}
  - {id: engine-earth, name: Engine case, on: ignition}
`;
const file = 'jobs/2026-03-07-earths.md';
const planned = record('title: Earths\ndate: 2026-03-07\nkind: repair\nstate: under way');
const withBattery = machineFile.replace('battery: no', 'battery: yes');

/** The record with the boxes of the sheet filled. */
function filled(files: Readonly<Record<string, string>>, answers: Readonly<Record<string, string>>): string {
  const { book, sheets } = smallBinder({ ...files, [file]: planned });
  const [job] = book.records.jobs;
  const sheet = sheets.filter(({ id }) => id === 'wiring');
  if (job === undefined || sheet.length === 0) throw new Error('no job or no sheet');
  const out = writeAnswers({
    record: { file, text: planned },
    book,
    job,
    sheet,
    answers: Object.entries(answers).map(([blank, value]) => ({ blank, value })),
    today: day('2026-03-08'),
  });
  expect(out.problems).toEqual([]);
  return out.value.text;
}

test('what wiring.yaml says is the last reading, with the day it was read off the machine', () => {
  const text = sheetSays(smallBinder({ 'wiring.yaml': wiring }), 'wiring');
  expect(text).toMatch(/Tail lamp body \| stop lamp \| 0\.21 V, 17 January 2026 \| \[____\] V \| \[____\] V/u);
  expect(text).toMatch(/ignition switch to coil .* 0\.3 Ω, 17 January 2026 \| \[____\] Ω/u);
  expect(text).toMatch(/Engine case \| ignition \|\s*\| \[____\] V/u);
});

test('what was measured again is a reading of the job, and the last one on the next sheet', () => {
  const files = { 'wiring.yaml': wiring };
  const text = filled(files, {
    'wiring/tail-earth/found': '0,34',
    'wiring/tail-earth/left': '0.06',
    'wiring/coil-feed/through': '0.4',
  });
  expect(text).toContain('{item: earth drop, found: {tail-earth: 0.34 V}, left: {tail-earth: 0.06 V}}');
  expect(text).toContain('{item: wire resistance, found: {coil-feed: 0.4 Ω}}');
  const binder = smallBinder({ ...files, [file]: text });
  expect(binder.problems).toEqual([]);
  const again = sheetSays(binder, 'wiring');
  expect(again).toContain('Tail lamp body | stop lamp | 0.06 V, 7 March 2026 |');
  expect(again).toContain('0.4 Ω, 7 March 2026');
  const [job] = binder.book.records.jobs;
  const blanks = blanksOfAll(binder.sheets.filter(({ id }) => id === 'wiring'));
  const given = new Map(blanks.map((blank) => [blank.id, job && withGiven(job, blank).given]));
  expect(given.get('wiring/tail-earth/found')).toBe('0.34 V');
  expect(given.get('wiring/engine-earth/found')).toBeUndefined();
});

test('what was read off the machine after the newest reading counts', () => {
  const text = filled({ 'wiring.yaml': wiring }, { 'wiring/tail-earth/found': '0.34' });
  const later = wiring.replace('2026-01-17', '2026-05-01');
  expect(sheetSays(smallBinder({ 'wiring.yaml': later, [file]: text }), 'wiring')).toContain('0.21 V, 1 May 2026');
});

test('without such a file the places of any machine keep their readings as well', () => {
  const files = { 'machine.yaml': withBattery };
  const text = filled(files, { 'form/earth-drop/engine/value': '0.08', 'form/earth-drop/engine/left': '0.03' });
  expect(text).toContain('{item: earth drop, found: {engine: 0.08 V}, left: {engine: 0.03 V}}');
  const again = sheetSays(smallBinder({ ...files, [file]: text }), 'wiring');
  expect(again).toContain(
    'To the engine, ignition on; with a magneto: running, lamps on | 0.03 V, 7 March 2026 | [____] V | [____] V',
  );
  expect(again).toContain('Common practice of the trade.');
});
