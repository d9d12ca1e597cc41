// Forms on sheets: lines by date of first use and equipment, road rules, what is called for to be tightened again, drawings in true scale.
import { describe, expect, test } from 'vitest';
import type { DrawingBlock, DrawingMark, Sheet } from '../../src/sheet/sheet.ts';
import { askedByDate } from '../../src/views/wording/first-use.ts';
import { sheetText } from '../goldens/sheet-text.ts';
import { binderOf, contentWith, day } from './binder.ts';

const today = '2026-11-14';
const pipit = binderOf('demo-bike', today);
const tern = binderOf('tests/fixtures/tern-350', today);
const finch = binderOf('tests/fixtures/finch-125', today);

type Binder = typeof pipit;

function sheet(binder: Binder, id: string): Sheet {
  const found = binder.sheets.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no sheet ${id}`);
  return found;
}
const textOf = (binder: Binder, id: string): string => sheetText(sheet(binder, id));

/** The binder of a folder with a piece of one of its files put in place of another. */
function changed(folder: string, file: string, from: string, to: string): Binder {
  return binderOf(folder, today, (files) =>
    files.map((one) => {
      if (one.file !== file) return one;
      expect(one.text).toContain(from);
      return { ...one, text: one.text.replace(from, to) };
    }),
  );
}

describe('date of first use', () => {
  const span = { firstUsedFrom: day('1931-01-01'), firstUsedBefore: day('1972-01-01') };
  test.each([
    ['1969-05', 'yes'],
    ['1930', 'no'],
    ['1931', 'yes'],
    ['1972-01-01', 'no'],
    ['1971-12', 'yes'],
    ['1972', 'no'],
    [undefined, 'not known'],
    ['before the war', 'not known'],
  ])('%s is asked: %s', (firstUse, asked) => {
    expect(askedByDate(span, firstUse)).toBe(asked);
  });
  test('a year that has the bound in its middle is not known closely enough', () => {
    expect(askedByDate({ firstUsedFrom: day('1973-08-01') }, '1973')).toBe('not known');
    expect(askedByDate({ firstUsedBefore: day('1973-08-01') }, '1973')).toBe('not known');
    expect(askedByDate({}, undefined)).toBe('yes');
  });
});

describe('roadworthiness', () => {
  test('the rules that machine.yaml names, with their numbers, and no others', () => {
    const uk = textOf(pipit, 'roadworthiness');
    for (const number of ['1.1.15', '4.1.1', '5.1.3', '5.2.1', '6.1.2']) expect(uk).toContain(`| ${number} |`);
    expect(uk).not.toContain('571.');
    expect(textOf(tern, 'roadworthiness')).toContain('| 571.119 |');
    const none = textOf(finch, 'roadworthiness');
    expect(none).toContain('only the common core is printed');
    expect(none).not.toContain('571.');
    expect(none).not.toContain('4.1.1');
  });
  test('a state has the lines of its country and its own', () => {
    const text = textOf(
      changed('tests/fixtures/tern-350', 'machine.yaml', 'road rules: us', 'road rules: us-pa'),
      'roadworthiness',
    );
    expect(text).toContain('571.119');
    expect(text).toContain('175.160(a)(1)');
  });
  test('rules that nobody wrote down here are named, not replaced', () => {
    const text = textOf(
      changed('demo-bike', 'machine.yaml', 'road rules: uk', 'road rules: ruritania'),
      'roadworthiness',
    );
    expect(text).toContain('ruritania');
    expect(text).toContain('The common core');
    expect(text).not.toContain('4.1.1');
  });
  test('the date of first use decides', () => {
    expect(textOf(pipit, 'roadworthiness')).toContain('main beam asked for below 50 cc');
    expect(textOf(pipit, 'roadworthiness')).not.toContain('after 1985');
    const late = textOf(
      changed('demo-bike', 'machine.yaml', 'first use: 1969-05', 'first use: 1988-03'),
      'roadworthiness',
    );
    expect(late).toContain('after 1985');
    expect(late).not.toContain('main beam asked for below 50 cc');
    const unknown = textOf(changed('demo-bike', 'machine.yaml', 'first use: 1969-05\n', ''), 'roadworthiness');
    expect(unknown).toContain('by date of first use, which is not known so closely');
  });
  test('equipment decides: no lamp line where there are no lamps', () => {
    expect(textOf(tern, 'roadworthiness')).not.toContain('Headlamp');
    expect(textOf(tern, 'roadworthiness')).toContain('No lamps fitted');
  });
  test('what was not read says so, and nothing is a verdict', () => {
    expect(textOf(pipit, 'roadworthiness')).toContain('asked for of machines first used after 1935 (memory)');
    for (const binder of [pipit, tern, finch])
      expect(textOf(binder, 'roadworthiness').toLowerCase()).not.toMatch(/\b(is|are|now) (safe|legal|roadworthy)\b/);
  });
});

describe('a form', () => {
  const sheetOf = (views: string): readonly string[] =>
    binderOf(
      'demo-bike',
      today,
      undefined,
      contentWith([
        {
          file: 'content/sheets/intake.md',
          text: `---\nsheet: intake\ncode: IN\ntitle: Intake\nper: machine\nsection: Log\nviews: ${views}\n---\n`,
        },
      ]),
    ).problems.map((one) => `${one.message} ${one.hint ?? ''}`);
  test('that does not exist is named with the nearest', () => {
    expect(sheetOf('[{form: intake-fotos}]').join('\n')).toMatch(/intake-fotos.*intake-photos/);
    expect(sheetOf('[{form: intake-photos}]').join('\n')).not.toContain('intake-photos');
  });
});

describe('tightening again', () => {
  test('names the head of a planned strip and leads with the maker’s figure', () => {
    expect(textOf(pipit, 're-torque')).toMatch(/Cylinder head nuts.*\| 2\.2\u00a0kgf·m \| \[____\]/);
  });
  test('the valve clearances come after the head of a four-stroke only', () => {
    expect(textOf(tern, 're-torque')).toContain('Then the valve clearances again');
    expect(textOf(pipit, 're-torque')).not.toContain('valve clearances again');
  });
  test('a joint that was made, run hot and not touched since is called for; once done it is not', () => {
    const job = (name: string, more: string): { file: string; text: string } => ({
      file: `jobs/${name}.md`,
      text: `---\ntitle: ${name}\ndate: ${name.slice(0, 10)}\nkind: assembly\nstate: done\n${more}\n---\n`,
    });
    const made = job(
      '2026-04-01-head',
      'work: [{tightened: cylinder-head-nut, to: 20 N·m, threads: oiled, result: reached}]',
    );
    const hot = job('2026-04-02-hot', 'heat cycles: 1');
    const again = job(
      '2026-04-03-cold',
      'work: [{tightened: cylinder-head-nut, to: 20 N·m, threads: oiled, result: reached}]',
    );
    const with_ = (...jobs: readonly { file: string; text: string }[]): string =>
      textOf(
        binderOf('tests/fixtures/finch-125', today, (files) => [...files, ...jobs]),
        're-torque',
      );
    expect(textOf(finch, 're-torque')).not.toContain('Cylinder head nuts');
    expect(with_(made)).not.toContain('Cylinder head nuts');
    expect(with_(made, hot)).toMatch(/Cylinder head nuts.*run hot 2\u00a0April\u00a02026/);
    expect(with_(made, hot, again)).not.toContain('Cylinder head nuts');
  });
});

function drawingOf(one: Sheet): DrawingBlock {
  const found = one.blocks.find((block) => block.type === 'drawing');
  if (found === undefined) throw new Error(`no drawing on ${one.id}`);
  return found;
}
const isHole = (mark: DrawingMark): mark is Extract<DrawingMark, { kind: 'circle' }> => mark.kind === 'circle';

describe('drawings in true scale', () => {
  test('the holes of a cover lie as far apart as they were measured', () => {
    const holes = drawingOf(sheet(pipit, 'screw-template')).marks.filter(isHole);
    const [first, , , fourth] = holes;
    expect(holes).toHaveLength(9);
    expect((fourth?.x ?? 0) - (first?.x ?? 0)).toBeCloseTo(112, 6);
    expect((first?.y ?? 0) - (fourth?.y ?? 0)).toBeCloseTo(9, 6);
  });
  test('without positions there is an empty field, and no hole', () => {
    expect(drawingOf(sheet(finch, 'screw-template')).marks.filter(isHole)).toEqual([]);
    expect(sheet(finch, 'torque-table').blocks.some((block) => block.type === 'drawing')).toBe(false);
  });
  test.each([
    ['millimetres', pipit],
    ['inches', tern],
  ])('the order of tightening goes across, every hole once, positions in %s', (_, binder) => {
    const marks = drawingOf(sheet(binder, 'torque-table')).marks;
    const turns = marks.flatMap((mark) => (mark.kind === 'label' ? [Number(mark.text)] : []));
    expect(turns.toSorted((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    const holes = marks.filter(isHole);
    const middle = holes.reduce((sum, one) => sum + one.x, 0) / holes.length;
    const [first, second] = [holes[turns.indexOf(1)], holes[turns.indexOf(2)]];
    const height = holes.reduce((sum, one) => sum + one.y, 0) / holes.length;
    const along = ((first?.x ?? 0) - middle) * ((second?.x ?? 0) - middle);
    const upwards = ((first?.y ?? 0) - height) * ((second?.y ?? 0) - height);
    expect(along + upwards).toBeLessThan(0);
  });
  test('the strip is as long as its arc of the rim', () => {
    const block = drawingOf(sheet(pipit, 'timing-strip'));
    const ends = block.marks.filter((mark) => mark.kind === 'label' && mark.text === '60');
    const [from, to] = ends.map((mark) => (mark.kind === 'label' ? mark.x : 0));
    expect((to ?? 0) - (from ?? 0)).toBeCloseTo((Math.PI * 92 * 120) / 360, 6);
  });
  test('the timing stands where its angle is, on both sides', () => {
    const marks = drawingOf(sheet(pipit, 'timing-strip')).marks;
    const at = (text: string): readonly number[] =>
      marks.flatMap((mark) => (mark.kind === 'label' && mark.text === text ? [mark.x] : []));
    const [middle = 0] = at('T');
    const [left = 0, right = 0] = at('22.6°');
    // 2.1 mm before the top of a stroke of 44.5 mm with a rod of 95 mm.
    expect(((right - middle) * 360) / (Math.PI * 92)).toBeCloseTo(22.63, 1);
    expect(middle - left).toBeCloseTo(right - middle, 6);
  });
  test('where the flywheel is inside, a disc stands for the strip, with the timing at its angle on both sides', () => {
    const { marks, size } = drawingOf(sheet(tern, 'timing-strip'));
    const middle = size.width / 2;
    const angles = marks.flatMap((mark) =>
      mark.kind === 'line' && mark.heavy === true
        ? [(Math.atan2(mark.x2 - middle, middle - mark.y2) * 180) / Math.PI]
        : [],
    );
    expect(angles.map((angle) => Math.round(angle * 100) / 100)).toEqual([0, -39, 39]);
    const numbers = marks.flatMap((mark) => (mark.kind === 'label' && mark.text === '90' ? [mark] : []));
    expect(numbers.map((mark) => Math.sign(mark.x - middle)).toSorted((a, b) => a - b)).toEqual([-1, 1]);
    expect(textOf(tern, 'timing-strip')).not.toContain('Diameter of the rim');
  });
  test('no strip is drawn for a rim that nobody measured, and the disc is there for who has none', () => {
    const unmeasured = changed('demo-bike', 'machine.yaml', '  flywheel: 92 mm\n', '');
    expect(textOf(unmeasured, 'timing-strip')).toContain('is not recorded, so no strip is drawn');
    expect(drawingOf(sheet(unmeasured, 'timing-strip')).title).toContain('disc');
  });
});
