// What calculations print where the trade looks for it, on both machines; nothing where the machine does not say enough.
import { describe, expect, test } from 'vitest';
import { composeSheets } from '../../src/compose/sheets.ts';
import type { SourceFile } from '../../src/source/files.ts';
import { sheetText } from '../goldens/sheet-text.ts';
import { binderOf } from './binder.ts';
import type { TestBinder } from './binder.ts';

const today = '2026-11-14';
const pipit = binderOf('demo-bike', today);
const tern = binderOf('tests/fixtures/tern-350', today);

/** A sheet as text, its spaces plain. */
function sheet(binder: TestBinder, id: string): string {
  const found = binder.sheets.find((one) => one.id === id);
  if (found === undefined) throw new Error('no sheet ' + id);
  return sheetText(found).replaceAll(/[\u00a0\u202f\u2009]/gu, ' ');
}

/** The demo with a line of one of its files changed. */
function changed(file: string, change: (text: string) => string): TestBinder {
  return binderOf('demo-bike', today, (files) =>
    files.map((one): SourceFile => (one.file === file ? { ...one, text: change(one.text) } : one)),
  );
}

describe('settings and figures', () => {
  test('the two-stroke: timing both ways with its worth, gears, mixture and jets', () => {
    const words = sheet(pipit, 'settings');
    for (const part of [
      '174.8 cc',
      '22.63°',
      '2.094 mm',
      '0.182 mm',
      '9.4 to 12.9 bar',
      '8.054:1',
      '12.93 to 13.46 km/h',
      '8.03 to 8.36 mph',
      '1736 to 1807 mm',
    ])
      expect(words).toContain(part);
    expect(words).toMatch(/2000 m.*\+9 % · 82 · 80/);
    expect(words).toContain('with main jet 85');
  });
  test('the four-stroke: clearance volume, psi, feet, no jet that is not recorded', () => {
    const words = sheet(tern, 'settings');
    for (const part of [
      '349.9 cc',
      '28.22 cc',
      '39.34°',
      '137 to 188 psi',
      'full-stroke ratio',
      '4.778:1',
      '15.31 to 15.94 mph',
      '6000 ft',
    ])
      expect(words).toContain(part);
    expect(words).toContain('No main jet with a number is recorded');
  });
  test('without a rod there is no angle, without an altitude no mixture table', () => {
    const bare = changed('machine.yaml', (text) => text.replace('  rod: 95 mm\n', '').replace('altitude: 85 m, ', ''));
    const words = sheet(bare, 'settings');
    expect(words).not.toContain('22.63°');
    expect(words).not.toContain('Mixture in other air');
  });
});

describe('torque', () => {
  test('setting with an extension in the units of the machine', () => {
    expect(sheet(pipit, 'torque-table')).toMatch(/350 mm.*9\.3 N·m.*8\.8 N·m.*8\.2 N·m.*7\.8 N·m/);
    expect(sheet(tern, 'torque-table')).toMatch(/14 in.*9\.3 lbf·ft/);
  });
  test('a slip of the unit in the book is asked about with what was probably meant', () => {
    const slipped = changed('maker/workshop-book.yaml', (text) =>
      text.replace('count: 8, torque: 2.0 kgf·m', 'count: 8, torque: 2.0 N·m'),
    );
    const asked = slipped.book.queries.filter((one) => one.code === 'torque-unit-slip');
    expect(asked.map((one) => one.message.replaceAll('\u00a0', ' ')).join()).toMatch(
      /Cylinder base nuts: 2\.0 N·m does not fit its neighbours.*kgf·m read as N·m \(9\.81\)\? 19\.6 N·m/,
    );
    expect(asked[0]?.at.file).toBe('maker/workshop-book.yaml');
  });
  test('a torque that no bolt of the thread carries is asked about', () => {
    const strong = changed('maker/workshop-book.yaml', (text) =>
      text.replace(
        'thread: M5x0.8, length: 22 mm, count: 2, into: aluminium, torque: 0.4 kgf·m',
        'thread: M5x0.8, length: 22 mm, count: 2, into: aluminium, torque: 6.4 kgf·m',
      ),
    );
    expect(strong.book.queries.map((one) => one.code)).toContain('torque-above-strength');
  });
  test('a nut tightened to the book’s number in another unit is asked about', () => {
    const record = 'jobs/2025-04-20-re-torque.md';
    const pulled = changed(record, (text) => text.replace(/to: 2\.2 kgf·m/, 'to: 2.2 N·m'));
    const messages = pulled.book.queries.filter((one) => one.code === 'torque-unit-slip').map((one) => one.message);
    expect(messages.join()).toContain('kgf·m read as N·m (9.81)');
  });
  test('both machines as they are raise neither', () => {
    for (const { book } of [pipit, tern])
      expect(book.queries.filter((one) => one.code.startsWith('torque-')).map((one) => one.message)).toEqual([]);
  });
});

describe('readings', () => {
  const history = sheet(pipit, 'history');
  test('the chain by the maker’s limit and by both rules, each named', () => {
    expect(history).toContain('Elongation at the last reading: 0.59 %');
    expect(history).toMatch(/2 %, common motorcycle practice \(no standard\), is reached at 259\.1 mm/);
    expect(history).toMatch(/the industrial rule \(ANSI practice\), is reached at 261\.6 mm/);
  });
  test('wear that is projected is a span of the machine’s distance', () => {
    expect(history).toMatch(
      /the limit is reached at 11\s?403 to 18\s?521 mi <working:wear-chain-20-links> of the machine/u,
    );
  });
  test('charge of the battery by its rested volts, and the scale beside the blank', () => {
    expect(history).toContain('Charge by the last reading: 86 to 100 %');
    expect(sheet(pipit, 'inspection-chassis')).toContain('6.33 V at 100 %');
  });
  test('compression is expected as a band; the full-stroke ratio is said to give too much', () => {
    expect(sheet(pipit, 'inspection-engine')).toContain('9.4 to 12.9 bar');
    expect(sheet(tern, 'inspection-engine')).toContain('from the full-stroke ratio: less in truth');
  });
});

describe('bores, tyres, oil', () => {
  test('bores by the rule that is named, with the oversize that cleans up', () => {
    const words = sheet(pipit, 'inspection-engine');
    expect(words).toContain('Taper and out-of-round: difference of diameters');
    expect(words).toMatch(/left.*0\.010 mm.*0\.75 mm/);
  });
  test('one height of the bore says nothing of taper', () => {
    const words = sheet(tern, 'inspection-engine');
    expect(words).not.toMatch(/Cylinder \|.*Taper/);
    expect(words).toMatch(/left \| 0\.0005 in.* \| 0\.010 in/);
  });
  test('tyres by marking and date code; a code that was never read is a blank', () => {
    expect(sheet(pipit, 'inspection-chassis')).toMatch(/front.*2\.75-17.*0625.*week 6 of 2025.*1\.8 years/);
    expect(sheet(tern, 'inspection-chassis')).toMatch(/rear.*3\.50-19/);
    expect(sheet(tern, 'inspection-chassis')).not.toContain('years');
  });
  test('oil for a can on the pocket card of the two-stroke only', () => {
    expect(sheet(pipit, 'torque-pocket-card')).toContain('1 l 40 ml · 2 l 80 ml · 5 l 200 ml · 10 l 400 ml');
    expect(sheet(tern, 'torque-pocket-card')).not.toContain('Oil for a can');
  });
});

describe('workings on paper', () => {
  test('are made when they are asked for, with every figure and where its values came from', () => {
    const sheets = composeSheets(pipit.book, { workings: true }).value;
    const workings = sheets.find((one) => one.id === 'workings');
    if (workings === undefined) throw new Error('no sheet of workings');
    const words = sheetText(workings).replaceAll('\u00a0', ' ');
    for (const part of [
      'V = π/4 · b² · s · n',
      '174.8 cc',
      'Larkmoor Pipit 175 workshop book',
      'machine.yaml',
      'Least bore that cleans up',
    ])
      expect(words).toContain(part);
  });
});
