// What somebody meets who writes the first few records of a machine from the manual alone.
import { describe, expect, it } from 'vitest';
import { readAnyQuantity } from '../../src/quantity/read-quantity.ts';
import { unknownReference } from '../../src/records/reference.ts';
import { writtenText } from '../../src/views/wording/value.ts';
import { machineFile, makerFile, pageSays, record, sheetSays, smallBinder } from './small-folder.ts';

const bought = record(`title: Bought
date: 2026-02-07
kind: buying
state: done
odometer: 12481 mi
next: wash it and look what is there
findings:
  - {id: frame-crack, saw: crack at the headstock, weight: stops, became: open}
  - {id: seat-torn, saw: seat torn, weight: note}
  - {id: cable-stiff, saw: stiff clutch cable, weight: limits, became: oiled 2026-02-21}`);
const washed = (more: string): string => record(`title: Washed\ndate: 2026-02-21\nkind: intake\nstate: done\n${more}`);

describe('open findings and what is next', () => {
  const binder = smallBinder({
    'jobs/2026-02-07-bought.md': bought,
    'jobs/2026-02-21-washed.md': washed('continues: 2026-02-07-bought'),
  });
  it.each(['machine-card', 'state-left-in', 'history'])('%s says what stops the machine', (id) => {
    expect(sheetSays(binder, id)).toMatch(/stops: crack at the headstock/);
    expect(sheetSays(binder, id)).not.toContain('limits: stiff clutch cable');
  });
  it('the first page says it too', () => {
    expect(pageSays(binder, 'index.html')).toContain('stops: crack at the headstock');
  });
  it('what a later record went on with is not next any more', () => {
    expect(binder.book.off.next).toBeUndefined();
    expect(sheetSays(binder, 'state-left-in')).toContain('Next: not written down');
  });
  it('stands while no record goes on with it, and gives way to a newer one', () => {
    const still = smallBinder({
      'jobs/2026-02-07-bought.md': bought,
      'jobs/2026-02-21-washed.md': washed('time: 1 h'),
    });
    expect(still.book.off.next?.text).toBe('wash it and look what is there');
    const newer = smallBinder({
      'jobs/2026-02-07-bought.md': bought,
      'jobs/2026-02-21-washed.md': washed('next: head off'),
    });
    expect(newer.book.off.next?.text).toBe('head off');
  });
});

describe('what is said of the distance', () => {
  it('is the owner’s word until readings bear it out', () => {
    const said = sheetSays(smallBinder({ 'jobs/2026-02-07-bought.md': bought }), 'machine-card');
    expect(said).toContain(
      'Odometer: as stated by the owner. The clock is stated to have counted the whole distance since June 1958;',
    );
    expect(said).not.toContain('1 June 1958');
  });
});

describe('checks of a hold point', () => {
  const binder = smallBinder({
    'jobs/2026-05-16-first-start.md': record(
      'title: First start\ndate: 2026-05-16\nkind: first start\nstate: done\nchecks: [stop-switch-opens]',
    ),
  });
  it('stand with the id that ticks them', () => {
    for (const said of [sheetSays(binder, 'hold-points'), pageSays(binder, 'hold-points.html')]) {
      const ids = binder.book.holds.flatMap(({ checks }) =>
        checks.filter((one) => one.state !== 'not for this machine').map((one) => one.check.id),
      );
      expect(ids.filter((id) => !said.includes(id))).toEqual([]);
    }
  });
  it('are all named in words when a start did not wait for them', () => {
    const held = binder.book.queries.find((one) => one.code === 'ridden-while-held');
    expect(held?.message).toContain('Compression read (compression-there); Petrol and oil mixed');
    expect(held?.message).not.toContain('stop-switch-opens');
  });
  it('are offered where an id was written from memory', () => {
    expect(
      unknownReference('compression-read', { file: 'a', path: [] }, 'check', [
        'bores-oiled',
        'compression-there',
        'before-compression',
      ]),
    ).toMatchObject({
      hint: 'Did you mean “compression-there” or “before-compression”?',
    });
  });
});

describe('a planned job with lines of its own and no procedure', () => {
  const binder = smallBinder({
    'maker/book.yaml': makerFile(
      'fasteners:\n  - {id: clutch-cover-screw, name: Clutch cover screws, of: clutch cover, thread: 5/16 BSF, count: 4, torque: 10 lbf·ft, page: 18}',
    ),
    'jobs/2026-11-28-clutch-cover.md': record(`title: Clutch cover off
date: 2026-11-28
kind: strip
state: planned
work:
  - {drained: gearbox oil}
  - {removed: clutch cover, fasteners: {clutch-cover-screw: 4}}
parts:
  - {part: clutch cover gasket, class: made, state: wanted}`),
  });
  it('is printed for taking apart, with its parts and with lines to write on', () => {
    const said = sheetSays(binder, 'teardown-2026-11-28-clutch-cover');
    expect(said).toContain('[ ] | [ ] | 1 | gearbox oil: drain');
    expect(said).toMatch(/\[ \] \| \[ \] \| 2 \| clutch cover: remove\. Fasteners: 4 × 5\/16 BSF Clutch cover screws/);
    expect(said).toMatch(/\[ \] \| clutch cover gasket/);
    expect(said.match(/^\[ \] \| \[ \] \| {2}\| _____ \| {2}\| _____/gm)).toHaveLength(6);
  });
  it('is printed for going together, with the torque of its fasteners', () => {
    const said = sheetSays(binder, 'assembly-2026-11-28-clutch-cover');
    expect(said).toMatch(/\[ \] \| 1 \| gearbox oil: fill/);
    expect(said).toMatch(/\[ \] \| 2 \| clutch cover: refit/);
    expect(said).toMatch(/Clutch cover screws, .*\| 10 lbf·ft \| \[____\]/);
    expect(said).toContain('it is not the strip read backwards');
  });
  it('is told as something to do', () => {
    const said = pageSays(binder, 'jobs/2026-11-28-clutch-cover.html');
    expect(said).toContain('### To do');
    expect(said).toContain('Remove | clutch cover');
    expect(said).not.toMatch(/Removed|Since then/);
  });
});

describe('one line of the maker’s schedule', () => {
  const binder = smallBinder({
    'maker/book.yaml': makerFile('services:\n  - {id: chain-lube, item: Drive chain, do: lubricate, every: 300 mi}'),
    'jobs/2026-02-07-bought.md': bought,
  });
  it('does not take brakes, tyres and hoses off the list', () => {
    const said = sheetSays(binder, 'service-due');
    for (const item of ['Brakes', 'Tyres', 'Fuel and oil hoses', 'Gearbox oil']) expect(said).toContain(item);
    expect(said).toMatch(/Tyres.*general, not the maker’s/);
    expect(said).toContain('Drive chain');
    // The maker speaks of the chain; and nothing is asked of a pump or a battery that is not there.
    expect(said).not.toMatch(/Chain, sprockets|Oil pump|Battery/);
  });
  it('leaves all of them counted as never recorded', () => {
    const never = binder.book.due.filter((one) => one.lastDone === undefined && one.state !== 'at its limit');
    expect(never.length).toBeGreaterThan(15);
    const told = /Never recorded here: (\d+) services/.exec(sheetSays(binder, 'machine-card'));
    expect(Number(told?.[1])).toBe(
      binder.book.due.filter((one) => ['due', 'overdue', 'not known'].includes(one.state)).length,
    );
    expect(Number(told?.[1])).toBeGreaterThan(15);
  });
});

describe('a mixture in words', () => {
  const premix = (value: string) =>
    smallBinder({
      'maker/book.yaml': makerFile(`settings:\n  - {id: premix, name: Petrol and oil, value: ${value}, page: 7}`),
    });
  it('is a problem that says what to write', () => {
    for (const value of ['half a pint to the gallon', '4 %']) {
      expect(premix(value).problems).toMatchObject([
        { code: 'mixture-not-a-ratio', hint: expect.stringContaining('16:1') },
      ]);
    }
    expect(premix('16:1').problems).toEqual([]);
    expect(premix('?').problems).toEqual([]);
  });
  it('is not claimed above a table without a line', () => {
    const said = sheetSays(premix('half a pint to the gallon'), 'before-first-start');
    expect(said).not.toContain('by volume, parts of petrol to one of oil');
    expect(said).toContain('The ratio is not known');
    expect(sheetSays(premix('16:1'), 'before-first-start')).toContain(
      'At 16:1 by volume, parts of petrol to one of oil',
    );
  });
});

describe('the pocket card', () => {
  it('says what it leaves out', () => {
    const binder = smallBinder({
      'maker/book.yaml': makerFile(`fasteners:
  - {id: clutch-cover-screw, name: Clutch cover screws, thread: 5/16 BSF, torque: 10 lbf·ft, page: 18}
  - {id: barrel-nut, name: Barrel base nuts, thread: 5/16 BSF, torque: ?}`),
    });
    expect(sheetSays(binder, 'torque-pocket-card')).toContain('Not on this card, no value is known: Barrel base nuts');
  });
});

describe('values as they are written', () => {
  const said = (text: string): string => {
    const read = readAnyQuantity(text);
    return read.ok ? writtenText(read.value).replaceAll('\u00a0', ' ') : '';
  };
  it.each([
    ['11/64 in', '11/64 in'],
    ['3/4 imp pt', '3/4 imp pt (426 ml)'],
    ['2 1/2 turns', '2 1/2 turns'],
    ['650 ml', '650 ml'],
    ['3.5 h', '3 h 30 min'],
    ['3 h 20 min', '3 h 20 min'],
    ['45 min', '45 min'],
    ['0.1719 in', '0.1719 in'],
  ])('%s is printed as %s', (text, printed) => {
    expect(said(text)).toBe(printed);
  });
});

describe('a record or an entry that cannot be read', () => {
  it('is named by others without a second problem', () => {
    const { problems } = smallBinder({
      'maker/book.yaml': makerFile('fasteners:\n  - {id: head-nut, name: Cylinder head nuts, torque: tight}'),
      'jobs/2026-04-18-on.md': record(
        'title: Head on\ndate: 2026-04-18\nkind: assembly\nstate: done\nwork: [{tightened: head-nut}, {tightened: hed-nut}]',
      ),
    });
    expect(problems.map((one) => [one.code, one.at.file])).toEqual([
      ['number-unreadable', 'maker/book.yaml'],
      // A name that no file declares is still one.
      ['reference-unknown', 'jobs/2026-04-18-on.md'],
    ]);
  });
});

describe('a folder without anything done', () => {
  const clock = 'from: {date: 1958-06, reads: 0 mi}';
  const binder = smallBinder({
    'jobs/2026-11-28-look.md': record('title: A first look\ndate: 2026-11-28\nkind: intake\nstate: planned'),
  });
  it('prints no day that no record gives', () => {
    expect(machineFile).toContain(clock);
    expect(new Set(binder.sheets.map((sheet) => sheet.recordsDate))).toEqual(new Set(['']));
    for (const id of ['machine-card', 'state-left-in', 'torque-pocket-card']) {
      expect(sheetSays(binder, id)).not.toMatch(/1 June 1958|25 November 2026/);
    }
  });
});
