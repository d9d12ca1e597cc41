// What a page offers and says fits the kind of machine: a four-stroke has no oil in its fuel, and a drive that nobody counted is not direct.
import { describe, expect, it } from 'vitest';
import { benchWorkings, workingsFor } from '../../src/views/bench/workings-at-bench.ts';
import { plainText } from '../../src/render/text-html.ts';
import type { Row } from '../../src/sheet/sheet.ts';
import { binderOf, type TestBinder } from './binder.ts';
import { machineFile, pageSays, record, sheetSays, smallBinder } from './small-folder.ts';

const tern = binderOf('tests/fixtures/tern-350', '2026-11-14');
const finch = binderOf('tests/fixtures/finch-125', '2026-11-14');
const wren = binderOf('tests/fixtures/from-the-manual', '2026-11-14');

function offered({ pages }: TestBinder): readonly string[] {
  return pages.map(({ file }) => file).filter((file) => file.startsWith('bench/'));
}

describe('workings at the bench', () => {
  it('ask a four-stroke for no oil in its fuel, and an electronic trigger for no gap', () => {
    for (const binder of [tern, finch]) {
      expect(offered(binder)).toHaveLength(benchWorkings.length - 1);
      expect(offered(binder)).not.toContain('bench/oil-in-fuel.html');
      expect(pageSays(binder, 'bench.html')).not.toContain('Oil in the fuel');
    }
    expect(pageSays(tern, 'bench/piston-position.html')).toContain('What a change of the points gap does to timing');
    const electronic = pageSays(finch, 'bench/piston-position.html');
    expect(electronic).not.toContain('points gap');
    expect(electronic).not.toContain('Gap first');
  });

  it('ask nothing of a pump where the oil is mixed in', () => {
    const page = pageSays(wren, 'bench/oil-in-fuel.html');
    expect(page).toContain('Topping up to a new ratio');
    expect(page).not.toContain('pump');
  });

  it('ask a shaft for no chain, and of what nobody has looked at everything', () => {
    const shaft = smallBinder({ 'machine.yaml': machineFile.replace('final drive: chain', 'final drive: shaft') });
    expect(offered(shaft)).not.toContain('bench/chain-wear.html');
    const unseen = machineFile
      .replace('final drive: chain', 'final drive: "?"')
      .replace('lubrication: premix', 'lubrication: "?"')
      .replace('trigger: points', 'trigger: "?"');
    const { features } = smallBinder({ 'machine.yaml': unseen }).book.records.machine;
    expect(workingsFor(features)).toEqual(benchWorkings);
  });
});

describe('a drive whose teeth nobody counted', () => {
  const page = (drives: string) =>
    pageSays(
      smallBinder({ 'machine.yaml': `${machineFile.replace('stroke: 69.7 mm', `stroke: 69.7 mm${drives}`)}` }),
      'settings.html',
    );
  it('is not taken for a direct one', () => {
    expect(pageSays(wren, 'settings.html')).toContain('the teeth of the primary are not recorded');
    expect(pageSays(wren, 'settings.html')).not.toContain('rpm');
    expect(pageSays(wren, 'bench/gearing.html')).toContain('primary, driven over driving is not given');
    expect(page('\n  gears: [14:32]')).toContain('the teeth of the primary and final drive are not recorded');
  });
  it('gives the ratios once it is written, direct ones too', () => {
    expect(page('\n  primary: 1:1\n  gears: [14:28]\n  final: 13:39')).toContain('6.000:1');
    expect(page('')).not.toContain('Gearing');
  });
});

describe('a machine of inches', () => {
  it('is asked in inches at the bench, and a metric one in millimetres', () => {
    const asked = ({ pages }: TestBinder): unknown => {
      const data: unknown = JSON.parse(
        pages.find(({ file }) => file === 'bench/chain-wear.html')?.make().bench?.data ?? '',
      );
      return typeof data === 'object' && data !== null && 'asked' in data ? data.asked : undefined;
    };
    expect(asked(tern)).toMatchObject({ mm: 'in', 'N·m': 'lbf·ft' });
    expect(asked(finch)).toEqual({});
  });
  it('has results in the unit of what was measured', () => {
    expect(pageSays(tern, 'bench/chain-wear.html')).toContain('Left to the maker’s limit: 0.13 in');
    expect(pageSays(tern, 'calculations/next-oversize.html')).not.toContain('59.25 mm');
  });
});

describe('the boxes of an engine sheet', () => {
  const heads = (id: string, binder: TestBinder): readonly (readonly string[])[] =>
    (binder.sheets.find((one) => one.id === id)?.blocks ?? []).flatMap((block) =>
      block.type === 'table' && block.use === 'work' && block.columns[0]?.head === ''
        ? [
            [
              block.columns
                .slice(2)
                .map(({ head }) => head)
                .join(),
              ...firstCells(block.rows),
            ],
          ]
        : [],
    );
  it('put under the name of a cylinder what it has, and clutch and shafts under none', () => {
    const [ofCylinders, ofEngine] = heads('inspection-engine', tern);
    expect(ofCylinders?.[0]).toBe('left cylinder,right cylinder');
    expect(ofCylinders?.join()).not.toContain('Clutch');
    expect(ofEngine?.[0]).toBe('Found');
    expect(ofEngine?.join()).toContain('Clutch friction plates');
  });
  it('are one table on a single', () => {
    expect(heads('inspection-engine', finch).map(([head]) => head)).toEqual(['Found']);
  });
});

function firstCells(rows: readonly Row[]): readonly string[] {
  return rows.flatMap((row) => (row.kind === 'cells' ? [plainText(row.cells[0]?.text ?? '')] : []));
}

it('says intake and axle to an American, in places of readings as well', () => {
  const sheet = sheetSays(tern, 'inspection-engine');
  expect(sheet).toContain('Intake stem in its guide');
  expect(sheet).not.toMatch(/inlet \||inlet (?:stem|cam)/iu);
});

describe('what is said once, and only where it is known', () => {
  it('asks to read no ratio that is only mixed', () => {
    expect(sheetSays(wren, 'inspection-engine')).not.toContain('Petrol and oil');
    expect(sheetSays(binderOf('demo-bike', '2026-11-14'), 'inspection-engine')).toContain('petrol to oil');
  });

  it('tightens a nut again in one row, with all that calls for it', () => {
    const sheet = sheetSays(wren, 're-torque');
    expect(sheet.match(/Head nuts, 4 ×/gu)).toHaveLength(1);
    expect(sheet).toContain('after the planned work, one heat cycle, cold again; by the schedule: due');
  });

  it('sums no price that nobody has seen', () => {
    const wanted =
      'title: Seals\ndate: 2026-11-20\nkind: repair\nstate: planned\nparts: [{part: bowl gasket, state: wanted}]';
    const page = pageSays(smallBinder({ 'jobs/2026-11-20-seals.md': record(wanted) }), 'costs.html');
    expect(page).toContain('Wanted: no price seen (bowl gasket)');
    expect(page).not.toContain('0.00');
  });

  it('names the rules of the book as a person would', () => {
    const page = pageSays(tern, 'workings-2.html');
    expect(page).toContain('Reading of the clock');
    expect(page).not.toContain('on-the-clock');
  });

  it('says no day of a distance to a service whose day is past', () => {
    const page = pageSays(tern, 'service.html');
    expect(page).toMatch(/Engine oil[^\n]*239 days over[^\n]*\| *$/mu);
    expect(page).toMatch(/Rear chain[^\n]*about 6 May 2027/u);
  });
});

it('parts the alphabet into pages of like length', () => {
  for (const binder of [tern, finch, wren]) {
    const parts = binder.pages.map(({ file }) => file).filter((file) => file.startsWith('a-z/'));
    const lengths = parts.map((file) => pageSays(binder, file).split('\n').length);
    expect(lengths.length).toBeGreaterThan(1);
    expect(Math.min(...lengths)).toBeGreaterThan(100);
    expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThan(lengths.length);
  }
});

it('speaks one dialect of tyres and carburettors all through', () => {
  const titles = tern.pages.map(({ title }) => title).join('\n');
  expect(titles).toContain('Tires as published');
  expect(titles).not.toMatch(/tyre/iu);
  for (const file of ['sources.html', 'coverage.html', 'calculations/tyre-marking.html', 'workings.html'])
    expect(pageSays(tern, file).replaceAll(/\{[^}]*\}|page:\S+|`[^`]*`/gu, ''), file).not.toMatch(
      /\btyres? (?:as|marking)\b|of tyres/iu,
    );
  expect(sheetSays(tern, 'plating-batch')).not.toContain('carburettor');
});

it('says of a setting what the book says, and of a half-read digit that nothing is judged by it', () => {
  expect(pageSays(tern, 'measurements.html')).toContain('By the book 11/32 in; range 5/16 to 3/8 in');
  expect(pageSays(tern, 'measurements.html')).toContain('Standard 110 to 130 psi; limit 90 psi min');
  expect(pageSays(wren, 'measurements.html')).toMatch(/4\?\.8 bar[^\n]*not read in full, so not judged/u);
});

it('marks a distance that its clocks do not bear out beside its figure, and none that nothing speaks against', () => {
  const bought = machineFile.replace('from: {date: 1958-06, reads: 0 mi}', 'from: {date: 2026-11-07, reads: 21044 mi}');
  const intake = 'title: Intake\ndate: 2026-11-07\nkind: intake\nstate: done\nodometer: 21044 mi';
  const bike = smallBinder({ 'machine.yaml': bought, 'jobs/2026-11-07-intake.md': record(intake) });
  for (const sheet of ['machine-card', 'history'])
    expect(sheetSays(bike, sheet)).toMatch(/Distance[^\n]*21.044 mi[^\n]*\(not actual, as said below\)/u);
  expect(sheetSays(tern, 'machine-card')).not.toContain('not actual');
});
