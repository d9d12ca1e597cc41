// A machine with one record and no book: nothing is told twice, no sheet is empty, and what is asked fits its kind.
import { describe, expect, it } from 'vitest';
import { binderOf } from './binder.ts';
import { machineFile, pageSays, record, sheetSays, smallBinder } from './small-folder.ts';

const intake = (readings: string): string =>
  record(`title: Intake\ndate: 2026-11-07\nkind: intake\nstate: done\nreadings:\n${readings}`);
const few = smallBinder({
  'jobs/2026-11-07-intake.md': intake(
    '  - {item: front tread, found: 2.1 mm}\n  - {item: compression, found: 7.2 bar, condition: cold}',
  ),
});
const finch = binderOf('tests/fixtures/finch-125', '2026-11-14');

describe('readings of one occasion', () => {
  it('are not told again where their line among the last readings says all', () => {
    const [last = '', once = ''] = pageSays(few, 'measurements.html').split('Read once');
    expect(last).toMatch(/Front.tread[^\n]*2\.1 mm/u);
    expect(once).not.toContain('tread');
    expect(once).toMatch(/Compression[^\n]*cold/u);
  });
  it('have no heading of their own where none has more to be told', () => {
    const one = smallBinder({ 'jobs/2026-11-07-intake.md': intake('  - {item: front-tread, found: 2.1 mm}') });
    expect(pageSays(one, 'measurements.html')).not.toContain('Read once');
  });
});

describe('a sheet of a machine without a book', () => {
  it('of the chassis has a box for what the trade measures on that kind of brake and drive', () => {
    const sheet = sheetSays(few, 'inspection-chassis');
    expect(sheet).toMatch(/Front lining, where it is thinnest/u);
    expect(sheet).toMatch(/twenty links/u);
    expect(sheet).not.toMatch(/pads|disc|Battery volts/u);
    expect(sheet).toMatch(/Front tread[^\n]*2\.1 mm/u);
  });
  it('asks beside the book only for what the book has no figure for', () => {
    const [, beside = ''] = sheetSays(finch, 'inspection-chassis').split('What the book gives no figure for');
    expect(beside).toContain('Rear lining');
    expect(beside).not.toMatch(/Front pads|Front disc|Chain slack/u);
  });
  it('of two cylinders has no columns for them where nothing is measured on a cylinder', () => {
    const twin = smallBinder({
      'machine.yaml': machineFile.replace('cylinders: 1', 'cylinders: 2\n  cylinder names: [left, right]'),
    });
    expect(sheetSays(twin, 'inspection-chassis')).not.toContain('left cylinder');
    expect(sheetSays(twin, 'inspection-engine')).toContain('left cylinder');
  });
  it('is no empty card', () => {
    expect(sheetSays(few, 'torque-pocket-card')).toContain('Nothing that belongs on it is recorded.');
    expect(sheetSays(finch, 'torque-pocket-card')).not.toContain('Nothing that belongs on it is recorded.');
  });
});

it('what undid a proof has the name that the book gives it, and no id', () => {
  const says = sheetSays(binderOf('tests/fixtures/tern-350', '2026-11-14'), 'next-test');
  expect(says).toContain('undone by Engine oil in the tank drained');
  expect(says).not.toContain('engine-oil');
});

it('words of the lay-up follow the spelling of the machine', () => {
  expect(sheetSays(few, 'lay-up')).toContain('stabiliser');
  expect(sheetSays(binderOf('tests/fixtures/tern-350', '2026-11-14'), 'lay-up')).toContain('stabilizer');
});

it('the timing strip speaks of a gap only where there may be points', () => {
  expect(sheetSays(few, 'timing-strip')).toContain('gap first');
  expect(sheetSays(finch, 'timing-strip')).not.toContain('gap first');
  const unseen = smallBinder({ 'machine.yaml': machineFile.replace('trigger: points', 'trigger: "?"') });
  expect(sheetSays(unseen, 'timing-strip')).toContain('gap first');
});
