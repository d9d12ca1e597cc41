// Wiring as recorded, engine measures beyond the book, rules of figures, the sheet of photographs, cards that stay cards.
import { describe, expect, test } from 'vitest';
import { sheetText } from '../goldens/sheet-text.ts';
import { binderOf, contentWith } from './binder.ts';
import type { TestBinder } from './binder.ts';

const today = '2026-11-21';
const pipit = binderOf('demo-bike', today);
const tern = binderOf('tests/fixtures/tern-350', today);
const finch = binderOf('tests/fixtures/finch-125', today);

function words(binder: TestBinder, id: string): string {
  const found = binder.sheets.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no sheet ${id}`);
  return sheetText(found).replaceAll(/[\u00a0\u202f\u2009]/gu, ' ');
}

describe('wiring and runs', () => {
  test('what was read off the machine stands on the sheet, with boxes to read it again', () => {
    const text = words(pipit, 'wiring');
    expect(text).toContain(
      'left coil to left points | white with black | bullet, left of the headstock | 0.2 Ω, 5 May 2024 | [____] Ω',
    );
    expect(text).toContain('Tail lamp body | stop lamp | 0.06 V, 7 March 2026 | [____] V | [____] V');
    expect(text).toContain('Clutch cable | left of the stem');
    expect(text).not.toContain('Wires, before the first one is pulled');
  });
  test('a machine without such a file has the general blanks, for what it has', () => {
    const text = words(tern, 'wiring');
    expect(text).toContain('Wires, before the first one is pulled');
    expect(text).toContain('Advance lever cable');
    expect(text).not.toContain('Wires of this machine');
  });
  test('an id given twice and a photo that is not there are problems', () => {
    const problems = binderOf('tests/fixtures/finch-125', today, (files) =>
      files.map((file) =>
        file.file === 'wiring.yaml'
          ? {
              ...file,
              text: file.text.replace('id: trigger,', 'id: kill, photo: photos/none.png,'),
            }
          : file,
      ),
    ).problems;
    expect(problems.map(({ code, at }) => `${at.file} ${code}`)).toEqual(
      expect.arrayContaining(['wiring.yaml id-twice', 'wiring.yaml photo-missing']),
    );
  });
});

describe('the engine sheet', () => {
  test('asks for what the book gives no figure for, and for nothing twice', () => {
    const four = words(tern, 'inspection-engine');
    expect(four).toContain('Valve guide, inside | intake | [____] in | [____] in');
    expect(four).not.toContain('Reed off its seat');
    expect(four).not.toContain('Ring gap in the bore');
    const two = words(pipit, 'inspection-engine');
    expect(two).toContain('Reed off its seat');
    expect(two).not.toContain('Valve guide');
    expect(two).not.toContain('Cylinder bore, at three heights');
  });
  test('a single has one column of boxes and no name for its cylinder', () => {
    const text = words(finch, 'inspection-engine');
    expect(text).toContain('Cylinder bore, at three heights, fore-aft and across the pin | top fore-aft | [____] mm\n');
    expect(text).not.toContain('single cylinder');
  });
  test('prints the rule of each figure that is worked out, those of valves for four strokes only', () => {
    for (const binder of [pipit, tern, finch])
      expect(words(binder, 'inspection-engine')).toContain('C = smallest bore − skirt');
    expect(words(tern, 'inspection-engine')).toContain(
      'Exhaust stem in its guide | S = guide − stem | [____] in | [____] in',
    );
    expect(words(pipit, 'inspection-engine')).not.toContain('S = guide − stem');
  });
  test('a chain is measured on the chassis sheet', () => {
    expect(words(pipit, 'inspection-engine')).not.toContain('Chain, twenty links');
    expect(words(pipit, 'inspection-chassis')).toContain('Chain, twenty links');
  });
});

describe('photographs', () => {
  test('every photo of the records once, with its record and file', () => {
    const text = words(pipit, 'photographs');
    expect(text.match(/^photo /gm)).toHaveLength(pipit.book.photos.length);
    expect(text).toMatch(/photo photos\/head-off\.png: .*Head and barrels off.*head-off\.png/);
    expect(
      words(
        binderOf('tests/fixtures/finch-125', today, (files) => files.filter(({ file }) => !file.startsWith('jobs/'))),
        'photographs',
      ),
    ).toContain('No photo is named in a record.');
  });
});

describe('states', () => {
  test.each([
    ['us-nc', '(b)'],
    ['us-md', '.05 A(1), (2)'],
    ['us-me', '1 B(1)'],
    ['us-hi', '(a)(10)'],
    ['us-ny', 'Stops from 20 mph'],
  ])('%s has its own lines after the federal ones, and says what was not read', (rules, line) => {
    const binder = binderOf(
      'demo-bike',
      today,
      (files) =>
        files.map((file) =>
          file.file === 'machine.yaml'
            ? {
                ...file,
                text: file.text
                  .replace('road rules: uk', `road rules: ${rules}`)
                  .replace('front brake: drum', 'front brake: disc'),
              }
            : file,
        ),
      contentWith(),
    );
    const text = words(binder, 'roadworthiness');
    expect(text).toContain('571.119');
    expect(text).toContain(line);
    expect(text).toContain('memory');
  });
});

describe('the history', () => {
  test('has originality, distance over time, workings and an index, for each machine', () => {
    for (const binder of [pipit, tern, finch]) {
      const text = words(binder, 'history');
      for (const head of [
        '## Originality',
        '# Workings and index',
        '## Index',
        '# Work log',
        '## Papers',
        '## Settings',
      ])
        expect(text).toContain(head);
    }
    expect(words(pipit, 'history')).toContain('plot Distance over time');
  });
  test('the originality table names what took the place of what, and no part that is said to be original', () => {
    const text = words(pipit, 'history');
    const table = text.slice(text.indexOf('## Originality'), text.indexOf('## Costs'));
    const named = pipit.book.parts.filter(({ part }) => part.state === 'fitted' && part.class !== 'original');
    expect(named.length).toBeGreaterThan(5);
    for (const { part } of named) if (part.movedTo === undefined) expect(table).toContain(part.part);
    for (const { changed, fastener } of pipit.book.torque)
      if (changed !== undefined) expect(table).toContain(fastener.name);
  });
  test('the index names a thing once, with all records that worked on it or read it', () => {
    const text = words(pipit, 'history');
    const index = text.slice(text.indexOf('## Index'));
    expect(index.match(/^Compression pressure \|/gm)).toHaveLength(1);
    const read = pipit.book.records.jobs.filter(
      (job) => job.state !== 'planned' && job.readings.some(({ item }) => item === 'compression'),
    );
    const line = index.split('\n').find((one) => one.startsWith('Compression pressure |')) ?? '';
    expect(line.split('; ')).toHaveLength(read.length);
  });
});
