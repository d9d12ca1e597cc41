// What an owner would stumble over: boxes in units of other tools, claims about what nobody has recorded yet, sheets in the wrong order.
import { describe, expect, test } from 'vitest';
import { binderOf } from './binder.ts';
import { machineFile, pageSays, sheetSays, smallBinder } from './small-folder.ts';

const today = '2026-11-28';
const tern = binderOf('tests/fixtures/tern-350', today);
const finch = binderOf('tests/fixtures/finch-125', today);

/** A machine of which no record speaks yet, and whose clock nobody has looked at. */
const bare = smallBinder({ 'machine.yaml': machineFile.replace(/clock:\n.*\n/u, '') });

describe('hold points', () => {
  test('ask in the units of the tools of the machine', () => {
    expect(sheetSays(tern, 'hold-points')).toMatch(/Compression read[^\n]*psi/u);
    expect(sheetSays(finch, 'hold-points')).toMatch(/Compression read[^\n]*bar/u);
  });
  test('say of a proof that ran out until which day, as days are said', () => {
    expect(sheetSays(tern, 'hold-points')).toContain('until 12 October 2025');
    expect(sheetSays(tern, 'hold-points')).not.toMatch(/until \d{4}-\d{2}-\d{2}/u);
  });
  test('name what undid a proof as the maker’s data does', () => {
    expect(sheetSays(tern, 'hold-points')).toContain('undone by Engine oil in the tank drained (Oil and points)');
  });
  test('count as undone by work only what work has undone', () => {
    expect(sheetSays(tern, 'hold-points')).toContain('1 check is not proved, undone by later work');
    expect(sheetSays(tern, 'hold-points')).toContain('10 checks are not proved, 9 of them undone by later work');
  });
});

describe('a machine of which nothing is recorded', () => {
  test('has cost nothing that is known, and says so once', () => {
    const says = pageSays(bare, 'costs.html');
    expect(says.match(/No money is recorded/gu)).toHaveLength(1);
    expect(says).not.toContain('0.00');
  });
  test('is not said to have a false clock', () => {
    const says = pageSays(bare, 'index.html');
    expect(says).toContain('Odometer: not known.');
    expect(says).not.toContain('not actual');
  });
  test('is not said to have nothing due where no schedule fits it', () => {
    const twin = smallBinder({
      'machine.yaml': machineFile.replace('stroke: two', 'stroke: four').replace('cylinders: 1', 'cylinders: 2'),
    });
    expect(pageSays(twin, 'index.html')).toContain('Due or overdue: not known: no schedule is recorded');
    expect(pageSays(bare, 'index.html')).not.toContain('no schedule is recorded');
  });
  test('explains no origin of torques that it has none of', () => {
    expect(pageSays(bare, 'torque.html')).not.toContain('of the maker’s book named under sources');
    expect(pageSays(finch, 'torque.html')).toContain('of the maker’s book named under sources');
  });
});

test('a planned job leads to its sheets as they are worked down', () => {
  const says = pageSays(tern, 'jobs/2026-04-11-top-end-planned.html');
  expect(says.match(/^.*(?:Teardown|Measuring|Assembly)$/gmu)?.map((line) => line.replace(/^\W*/u, ''))).toEqual([
    'Teardown',
    'Measuring',
    'Assembly',
  ]);
});

test('the speeds of a machine whose clock counts miles stand in miles first', () => {
  expect(pageSays(tern, 'settings.html')).toMatch(/mph for 1000 rpm.*km\/h for 1000 rpm/u);
  expect(pageSays(finch, 'settings.html')).toMatch(/km\/h for 1000 rpm.*mph for 1000 rpm/u);
});

describe('what is said of many lines at once', () => {
  test('stands above services that no record names, and not in each', () => {
    const says = sheetSays(finch, 'service-due');
    expect(says.match(/an unknown history counts as due/gu)).toHaveLength(1);
    expect(says).toContain('Fork oil: renew');
  });
  test('what is due already is not told again among what is done together', () => {
    const [, together = ''] = sheetSays(finch, 'service-due').split('is done together');
    expect(together).toContain('Brake fluid');
    expect(together).not.toContain('Fork oil');
  });
  test('a reason that most causes share stands above them, and another one beside its cause', () => {
    const says = sheetSays(binderOf('tests/fixtures/from-the-manual', today), 'next-test');
    expect(says.match(/common on what has stood/giu)).toHaveLength(1);
    expect(says).toMatch(/Ignition timing wrong \(moved since/u);
  });
  test('a lot for the plater is one line, in the bag where it ends', () => {
    const says = sheetSays(finch, 'plating-batch');
    expect(says.match(/Rear spindle nut/gu)).toHaveLength(1);
    expect(says).toMatch(/Rear spindle nut[^\n]*bag 3/u);
  });
});

test('engine oil is no part that could be original', () => {
  const says = sheetSays(tern, 'originality');
  expect(says).toContain('head gasket');
  expect(says).not.toContain('engine oil');
});

test('inches are read in inches', () => {
  const says = pageSays(tern, 'measurements.html');
  expect(says).toContain('read in inches');
  expect(says).not.toContain('read in in;');
});

test('an evening with one job tells its obstacles once', () => {
  expect(sheetSays(tern, 'evening')).not.toContain('What would free most');
  expect(sheetSays(binderOf('tests/fixtures/from-the-manual', today), 'evening')).toContain('What would free most');
});

test('columns that no row of a record has anything in are not there', () => {
  const says = pageSays(tern, 'jobs/2025-06-01-re-torque.html');
  expect(says).toContain('Done | To what | Particulars\n');
  expect(pageSays(tern, 'jobs/2025-03-15-bores-oiled.html')).toContain('Done | To what | Particulars | Since then\n');
});

test('what was left at the left cylinder is not said in one word twice', () => {
  const says = pageSays(tern, 'part-by-part/rocker-box.html');
  expect(says).toContain('as found: left 1 thou, right 4 thou; as left: left 3 thou, right 3 thou');
});
