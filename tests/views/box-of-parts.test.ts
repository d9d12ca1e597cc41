// What somebody meets whose machine came as boxes: no clock, a planned intake, things loose, a book in fractions of an inch.
import { describe, expect, it } from 'vitest';
import { backText } from '../../src/book/plan/way-back-text.ts';
import { wayBack } from '../../src/book/plan/way-back.ts';
import { writtenKeys } from '../../src/views/wording/written-keys.ts';
import { machineFile, makerFile, pageSays, record, sheetSays, smallBinder } from './small-folder.ts';

const withoutClock = machineFile.replace(/clock:\n.*\n/u, '');
const plain = 'kind: buying\nstate: done';

describe('a machine without a clock', () => {
  const bought = record(
    `title: Bought\ndate: 2025-11-01\n${plain}\nodometer: 12480 mi\nmoney: [{paid: 650.00 GBP, for: it}]`,
  );
  const tested = record('title: Ridden\ndate: 2026-05-01\nkind: ride\nstate: done\nodometer: 12500 mi');
  const binder = smallBinder({
    'machine.yaml': withoutClock,
    'jobs/2025-11-01-bought.md': bought,
    'jobs/2026-05-01-ridden.md': tested,
  });

  it('has no distance of its own, and the clock says what it says', () => {
    expect(binder.book.odometer.now.machine).toBeUndefined();
    const card = sheetSays(binder, 'machine-card');
    expect(card).toMatch(/On the clock: 12\s500 mi/u);
    expect(card).toContain('Distance of the machine: not known');
    expect(pageSays(binder, 'costs.html')).not.toContain('Ridden');
  });

  it('has a running-in card without an empty unit', () => {
    expect(sheetSays(binder, 'running-in')).toContain('Begins at, on the clock:');
    expect(sheetSays(smallBinder({}), 'running-in')).toContain('Begins at, on the clock (mi):');
  });
});

describe('a planned intake', () => {
  const planned = (kind: string): string =>
    record(`title: First look\ndate: 2026-12-01\nkind: ${kind}\nstate: planned\nreadings: [{item: front tread}]`);
  const ofJob = (kind: string): readonly string[] =>
    smallBinder({ 'jobs/2026-12-01-look.md': planned(kind) })
      .sheets.filter(({ job }) => job === '2026-12-01-look')
      .map(({ code }) => code);

  it('takes nothing apart and puts nothing together', () => {
    expect(ofJob('strip')).toEqual(['ME', 'TD']);
    expect(ofJob('intake')).toEqual(['ME']);
  });

  it('says of the place in the head what the sheet calls it', () => {
    const intake = planned('intake').replace('\n---\n', '\nremarks: [{at: today/1/3, says: in the barn}]\n---\n');
    const begun = intake.replace('planned', 'under way').replace('2026-12-01', '2026-11-20');
    const binder = smallBinder({ 'jobs/2026-11-20-look.md': begun });
    expect(pageSays(binder, 'jobs/2026-11-20-look.html')).toContain('Where | in the barn');
  });
});

describe('a book in inches', () => {
  const maker = makerFile(`settings:
  - {id: ignition-timing, name: Ignition timing, value: 7/16"}
  - {id: air-screw, name: Air screw, value: 2½ turns}
fasteners:
  - {id: rear-spindle-nut, name: Rear spindle nut, thread: 1/2 BSF, torque: 35 lbf·ft}
  - {id: barrel-nut, name: Barrel nuts, of: barrel, thread: 3/8 BSF, torque: 20 lbf·ft}
limits:
  - {id: bore, name: Cylinder bore, unit: in, standard: 2.7950 to 2.7955 in, limit: 2.803 in max}
services:
  - {id: fork-oil-change, item: Fork oil, do: renew, every: 12 months, uses: [fork-oil]}`);
  const off = record(`title: Off
date: 2026-11-01
kind: strip
state: done
work: [{loosened: rear-spindle-nut}, {removed: barrel}]`);
  const binder = smallBinder({ 'maker/book.yaml': maker, 'jobs/2026-11-01-off.md': off });

  it('keeps its fractions', () => {
    expect(sheetSays(binder, 'settings')).toContain('7/16"');
    expect(sheetSays(binder, 'settings')).toContain('2½ turns');
  });

  it('does not say that a reading is nothing past its limit', () => {
    const measured = (bore: string): string =>
      pageSays(
        smallBinder({
          'maker/book.yaml': maker,
          'jobs/2026-11-02-bore.md': record(
            `title: Bore\ndate: 2026-11-02\nkind: measuring\nstate: done\nreadings: [{item: bore, found: ${bore}}]`,
          ),
        }),
        'measurements.html',
      );
    expect(measured('71.2 mm')).toContain('at the limit: ');
    expect(measured('2.805 in')).toContain('0.002 in past');
    expect(measured('2.801 in')).toContain('0.002 in: ');
  });

  it('says the name of a loose fastener once, and of a part what holds it', () => {
    const said = (['pushed', 'running'] as const).map((goal) =>
      wayBack(binder.book, goal).steps.map((step) => backText(binder.book, step).join('; ').replaceAll('\u00a0', ' ')),
    );
    expect(said[0]).toEqual(['tighten Rear spindle nut; 35 lbf·ft']);
    expect(said[1]?.join('\n')).toContain('tighten Barrel nuts: 20 lbf·ft');
  });

  it('says of a fluid that the book does not give what it is', () => {
    expect(sheetSays(binder, 'service-sheet')).toContain('renew; fork oil (not in the book)');
  });

  it('names a thing once among what was never recorded', () => {
    const [line = ''] = sheetSays(binder, 'known-faults')
      .split('\n')
      .filter((one) => one.includes('Never recorded here'));
    const things = line
      .replace(/^.*?: /u, '')
      .replace(/\.$/u, '')
      .split('; ');
    expect(things.length).toBeGreaterThan(3);
    expect(things.filter((one, index) => things.indexOf(one) !== index)).toEqual([]);
  });
});

describe('what to write', () => {
  it('stands out, and a text without it or with a lone sign stays as it is', () => {
    expect(writtenKeys('write `page:`, so')).toEqual(['write ', { kind: 'code', text: 'page:' }, ', so']);
    expect(writtenKeys('`a` or `b`')).toEqual([{ kind: 'code', text: 'a' }, ' or ', { kind: 'code', text: 'b' }]);
    for (const plain of ['look again', '5` long']) expect(writtenKeys(plain)).toBe(plain);
  });
});
