// What a calculation says at its very edges, and which of two it takes: there a slip of one sign shows nowhere else, and may hurt.
import { describe, expect, test } from 'vitest';
import { projectWear } from '../../src/calc/wear-projection.ts';
import { workOut } from '../../src/calc/work.ts';

type Given = Readonly<Record<string, string>>;

const size = (id: string, given: Given, output: string): number =>
  workOut(id, given).figures[output]?.quantity ?? Number.NaN;

describe('the load of a cover’s screw', () => {
  const preload = (mark: string, into: string): number =>
    size('cover-torque', { thread: 'M6', class: mark, into }, 'preload');
  const halfStrip = (material: string): number =>
    size('thread-strip', { thread: 'M6', into: material, engagement: '9 mm' }, 'strip load') / 2;
  const ofProof = (mark: string): number => 0.75 * size('bolt-strength', { thread: 'M6', class: mark }, 'proof load');

  test('is the lesser of what the screw and what the hole can bear', () => {
    expect(preload('12.9', 'aluminium') / halfStrip('aluminium')).toBeCloseTo(1, 3);
    expect(preload('12.9', 'aluminium')).toBeLessThan(ofProof('12.9') / 2);
    // The published proof load is rounded.
    expect(preload('4.8', 'aluminium') / ofProof('4.8')).toBeCloseTo(1, 2);
    expect(preload('4.8', 'aluminium')).toBeLessThan(halfStrip('aluminium'));
  });

  test('grows by the wider hole of an insert, and by no more', () => {
    const gain = preload('12.9', 'aluminium with wire thread insert') / preload('12.9', 'aluminium');
    // An insert for M6 sits in a thread of 7.08 mm.
    expect(gain).toBeGreaterThan(1.1);
    expect(gain).toBeLessThan(1.3);
  });

  test('is turned into torque by the least friction at its top, so that a slippery thread is not overdone', () => {
    const given = { thread: 'M6', class: '4.8', into: 'aluminium', threads: 'dry' };
    const figure = workOut('cover-torque', given).figures['torque'];
    const friction = figure?.origin.kind === 'worked out' ? figure.origin.working.inputs : [];
    const of = (symbol: string): number => friction.find((one) => one.symbol === symbol)?.figure.quantity ?? Number.NaN;
    const nut = (mu: number): number => 0.159 + 0.577 * mu * 5.35 + (mu * 8.3) / 2;
    expect(of('μ_low')).toBeLessThan(of('μ_high'));
    const wanted = (preload('4.8', 'aluminium') * nut(of('μ_low'))) / 1000;
    expect((figure?.band?.high ?? 0) / wanted).toBeGreaterThan(0.95);
    expect((figure?.band?.high ?? 0) / wanted).toBeLessThan(1.05);
  });
});

describe('a torque wrench', () => {
  const verdict = (torque: number): string | undefined =>
    workOut('wrench-range', { torque: `${String(torque)} N·m`, least: '10 N·m', greatest: '60 N·m' }).words['verdict'];
  test('can do what lies on the ends of its scale, and nothing beyond them', () => {
    const low = 'in its range, but below the 20 % at which wrenches are checked';
    expect([9.9, 10, 11.9, 12, 60, 60.1].map(verdict)).toEqual([
      'below its range',
      low,
      low,
      'in its range',
      'in its range',
      'above its range',
    ]);
  });

  test('has no setting once an extension points back to its grip', () => {
    const setting = (extension: string, angle = '0°') =>
      workOut('wrench-setting', { torque: '20 N·m', length: '300 mm', extension, angle });
    for (const worked of [setting('-300 mm'), setting('-301 mm'), setting('-300 mm', '60°')]) {
      expect(worked.figures['setting']).toBeUndefined();
      expect(worked.doubts.map((one) => one.code)).toEqual(['calculation-out-of-range']);
    }
    expect(setting('-150 mm').figures['setting']?.quantity).toBeCloseTo(40, 9);
  });
});

test('a gap that is right without a shim is no fault, and one that is too small is', () => {
  const given = { old: '0.30 mm', wanted: '0.40 mm', step: '0.05 mm' };
  const right = workOut('shim', { ...given, measured: '0.10 mm' });
  expect(right.figures['shim']?.quantity).toBe(0);
  expect(right.doubts).toEqual([]);
  const tooSmall = workOut('shim', { ...given, measured: '0.09 mm' });
  expect(tooSmall.figures['shim']).toBeUndefined();
  expect(tooSmall.doubts.map(({ code }) => code)).toEqual(['calculation-out-of-range']);
});

test('a shim between two sizes is rounded the way that was asked for', () => {
  const given = { old: '2.52 mm', measured: '0.30 mm', wanted: '0.37 mm', step: '0.02 mm' };
  const shim = (rounding: string): number => Math.round(size('shim', { ...given, rounding }, 'shim') * 1e6) / 1e3;
  expect(['larger clearance', 'smaller clearance', 'nearest'].map(shim)).toEqual([2.44, 2.46, 2.46]);
});

describe('a chain', () => {
  const verdict = (length: string, more: Given): string | undefined =>
    workOut('chain-wear', { length, pitches: '20', pitch: '12.7 mm', ...more }).words['verdict'];
  test('at the maker’s limit is inside it, and past it a hair beyond', () => {
    expect(verdict('259 mm', { limit: '259 mm' })).toBe('inside the maker’s limit');
    expect(verdict('259.1 mm', { limit: '259 mm' })).toBe('past the maker’s limit');
  });
  test('is judged by the stricter of the two rules on a sprocket of many teeth', () => {
    // 1.8 %: under the common 2 %, and past 200/120.
    expect(verdict('258.57 mm', { teeth: '120' })).toMatch(/^past 200\/N/u);
    expect(verdict('258.57 mm', { teeth: '40' })).toMatch(/^under 2 %/u);
    expect(verdict('260 mm', { teeth: '40' })).toMatch(/^past 2 %/u);
  });
});

test('a cranking pressure is in its band between both ends, and below or above it beyond them', () => {
  const figure = workOut('cranking-pressure', { ratio: '7:1' }).figures['pressure'];
  const [low, high] = [figure?.band?.low ?? Number.NaN, figure?.band?.high ?? Number.NaN].map((end) => end / 1e5);
  const verdict = (share: number): string | undefined => {
    const reading = `${((low ?? 0) + share * ((high ?? 0) - (low ?? 0))).toFixed(3)} bar`;
    return workOut('cranking-pressure', { ratio: '7:1', reading }).words['verdict'];
  };
  expect([-0.1, 0.1, 0.9, 1.5].map(verdict)).toEqual([
    'below the band',
    'in the band',
    'in the band',
    'above the band',
  ]);
});

test('a torque is held against the middle of its neighbours, between the two middle ones', () => {
  const slip = (torque: string, neighbours: string): string | undefined =>
    workOut('torque-slip', { torque, neighbours }).words['slip'];
  expect(slip('98 N·m', '10 N·m; 40 N·m')).toBeUndefined();
  expect(slip('98 N·m', '10 N·m')).toBeDefined();
});

test('a charge of more than a fifth of the capacity is doubted, and a fifth is not', () => {
  const doubts = (current: string): readonly string[] =>
    workOut('charge-time', { capacity: '10 Ah', charge: '50 %', current }).doubts.map((one) => one.code);
  expect([doubts('2 A'), doubts('2.1 A')]).toEqual([[], ['calculation-unlikely']]);
});

test('thinner air wants a leaner needle, thicker air a richer one, and little change none', () => {
  const needle = (now: string): string | undefined =>
    workOut('jet-change', { jet: '110', numbering: 'bore', 'density before': '1.20 kg/m³', 'density now': now }).words[
      'needle'
    ];
  expect(['1.10 kg/m³', '1.18 kg/m³', '1.22 kg/m³', '1.30 kg/m³'].map(needle)).toEqual([
    expect.stringMatching(/^thinner air: .* go down/u),
    'leave the needle',
    'leave the needle',
    expect.stringMatching(/^thicker air: .* come up/u),
  ]);
});

test('an arc between two stops that is longer than the whole rim has no middle', () => {
  const half = (arc: string) => workOut('top-from-stops', { arc, rim: '100 mm' });
  expect(half('310 mm').figures['half']?.quantity).toBeCloseTo(0.155, 9);
  expect(half('315 mm').figures).toEqual({});
  expect(half('315 mm').doubts.map((one) => one.code)).toEqual(['calculation-out-of-range']);
});

describe('oil in the fuel', () => {
  test('is never to be taken out of a tank: where there is too much, none is added, and it is said', () => {
    const rich = { 'in tank': '4 l', 'ratio in tank': '16:1', added: '1 l', ratio: '50:1' };
    const worked = workOut('tank-top-up', rich);
    expect(worked.figures['oil']?.quantity).toBe(0);
    expect(worked.doubts.map((one) => one.code)).toEqual(['calculation-unlikely']);
    expect(workOut('tank-top-up', { ...rich, added: '20 l' }).doubts).toEqual([]);
  });
  test('of a pump is doubted when it is less than the leanest of the book by more than a quarter', () => {
    const doubts = (oil: string): readonly string[] =>
      workOut('oil-pump-use', { oil, fuel: '10 l', least: '40:1' }).doubts.map((one) => one.code);
    expect([doubts('250 ml'), doubts('210 ml'), doubts('190 ml')]).toEqual([[], [], ['calculation-unlikely']]);
  });
});

test('lamps that take more than the generator gives are doubted, and others are not', () => {
  const doubts = (generator: string): readonly string[] =>
    workOut('lamp-load', { lamps: '25 W; 5 W', supply: '6 V', generator }).doubts.map((one) => one.code);
  expect([doubts('30 W'), doubts('29 W')]).toEqual([[], ['calculation-unlikely']]);
});

describe('wear', () => {
  const points = (...values: readonly number[]) => values.map((value, index) => ({ at: index * 1000, value }));
  test('that has come to the very limit has reached it', () => {
    expect(projectWear(points(50, 50.05, 50.1), 50.1, 1).kind).toBe('past');
    expect(projectWear(points(4, 3.75, 3.5), 3.5, -1).kind).toBe('past');
    expect(projectWear(points(50, 50.05, 50.099), 50.1, 1).kind).toBe('span');
  });
  test('that has not reached its limit cannot have done so earlier', () => {
    const found = projectWear(points(50, 50.08, 50.02, 50.09, 50.05), 50.1, 1);
    expect(found).toMatchObject({ kind: 'span', earliest: 4000 });
  });
});

describe('the gap of a ring', () => {
  const figures = (growth: Given) => workOut('ring-gap', { bore: '50 mm', gap: '0.20 mm', ...growth }).figures;
  test('is not worked out of a bore whose growth is not known', () => {
    expect(Object.keys(figures({}))).toEqual(['common']);
  });
  test('is as it was where the bore did not grow', () => {
    expect(size('ring-gap', { bore: '50 mm', gap: '0.20 mm', growth: '0 mm' }, 'gap')).toBeCloseTo(0.0002, 9);
    expect(figures({ growth: '0 mm' })['added']?.quantity).toBe(0);
  });
});
