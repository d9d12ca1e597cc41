// The maker’s rule for taper and out-of-round: figures follow it and name the book; without one the difference is taken, and it is said.
import { describe, expect, it } from 'vitest';
import { machineFile, makerFile, record, sheetSays, smallBinder } from './small-folder.ts';

const measured = record(`title: Measured
date: 2026-05-01
kind: measuring
state: done
readings:
  - {item: bore, found: {top fore-aft: 60.10 mm, top across: 60.06 mm, bottom fore-aft: 60.02 mm, bottom across: 60.02 mm}}`);

function sheet(rule: string): string {
  const limit = `limits:\n  - {id: bore, name: Cylinder bore, of: barrel, positions: [top fore-aft, top across, bottom fore-aft, bottom across], unit: mm, standard: 60.00 to 60.02 mm, limit: 60.15 mm max, page: 31${rule}}`;
  return sheetSays(
    smallBinder({
      'machine.yaml': machineFile.replace('units: imperial', 'units: metric'),
      'maker/book.yaml': makerFile(limit),
      'jobs/2026-05-01-measured.md': measured,
    }),
    'inspection-engine',
  );
}

describe('taper and out-of-round', () => {
  it('are half the difference where the book says so', () => {
    const text = sheet(', rule: half the difference');
    expect(text).toMatch(/\| 0\.040 mm .*\| 0\.020 mm /u);
    expect(text).toContain('Taper and out-of-round: half the difference of diameters. The rule of the book: Rider');
    expect(text).toContain('T = ½ (largest − smallest down the bore, in one direction)');
    expect(text).toContain('Taper and out-of-round by the rule of the book: Rider');
    expect(text).not.toContain('No rule of the book');
  });
  it('are the difference where it says that', () => {
    const text = sheet(', rule: difference');
    expect(text).toMatch(/\| 0\.080 mm .*\| 0\.040 mm /u);
    expect(text).toContain('T = largest − smallest');
    expect(text).not.toContain('No rule of the book');
  });
  it('are the difference where no rule is on record, and it is said', () => {
    const text = sheet('');
    expect(text).toMatch(/\| 0\.080 mm .*\| 0\.040 mm /u);
    expect(text).toContain('No rule of the book is on record here, and makers differ.');
  });
});
