// The way back: last off first on, fills when all is closed, the hard order before both; only what is needed for the goal.
import { describe, expect, test } from 'vitest';
import { backText } from '../../src/book/plan/way-back-text.ts';
import { wayBack, type Goal } from '../../src/book/plan/way-back.ts';
import { evening } from '../evenings/evening.ts';
import { wagtailBook } from '../evenings/wagtail-book.ts';

const spindle = '  - {id: front-spindle-nut, name: Front spindle nut, of: front wheel, thread: M12x1.25}\n';
const maker = wagtailBook({ fasteners: spindle }).replace(
  'settings:\n',
  'fluids:\n  - {id: gearbox-oil, name: Gearbox oil, quantity: 650 ml, grade: SAE 30}\n  - {id: fork-oil, name: Fork oil}\nsettings:\n',
);

function way(jobs: Readonly<Record<string, string>>, goal: Goal): readonly string[] {
  const { book } = evening('2026-05-20', jobs, { maker });
  return wayBack(book, goal).steps.map((step) => backText(book, step).join('; ').replaceAll('\u00a0', ' '));
}
const first = (lines: readonly string[]): readonly string[] => lines.map((line) => line.split(';')[0] ?? '');

describe('to where the engine can run', () => {
  const strip = {
    '2026-05-01-a':
      'work: [{drained: gearbox-oil}, {removed: kickstart cover, bag: 4}, {removed: cylinder head, fasteners: {cylinder-head-nut: 4}}, {fitted temporarily: rag in the bore}]',
  };
  test('the last thing off is the first on, and oil goes in when all is closed', () => {
    expect(first(way(strip, 'running'))).toEqual([
      'take away rag in the bore',
      'refit cylinder head',
      'refit kickstart cover',
      'fill Gearbox oil',
    ]);
  });
  test('says where it lies, what is tightened and to what, and how much goes in', () => {
    const lines = way(strip, 'running');
    expect(lines[1]).toContain('tighten Cylinder head nuts: 22 N·m, threads dry, crosswise');
    expect(lines[2]).toContain('from bag 4');
    expect(lines[3]).toBe('fill Gearbox oil; 650 ml, SAE 30');
  });
  test('petrol comes last of all, and what the book does not say stays unknown', () => {
    const lines = way({ '2026-05-01-a': 'work: [{drained: petrol}, {drained: gearbox-oil}]' }, 'running');
    expect(first(lines)).toEqual(['fill Gearbox oil', 'fill petrol']);
    expect(way({ '2026-05-01-a': 'work: [{drained: fork-oil}]' }, 'pushed')).toEqual([
      'fill Fork oil; quantity not known',
    ]);
  });
  test('leaves aside what it can do without', () => {
    const jobs = { '2026-05-01-a': 'work: [{removed: seat}, {removed: rear wheel}, {removed: carburettor}]' };
    expect(first(way(jobs, 'running'))).toEqual(['refit carburettor']);
    const { book } = evening('2026-05-20', jobs, { maker });
    expect(wayBack(book, 'running').aside.map(({ entry }) => entry.thing)).toEqual(['seat', 'rear wheel']);
  });
});

describe('to where it can be pushed', () => {
  test('takes only what it stands, rolls, steers and stops on', () => {
    const jobs = {
      '2026-05-01-a':
        'work: [{removed: cylinder head}, {loosened: rear-spindle-nut}, {removed: rear wheel, fasteners: {rear-spindle-nut: 1}}]',
    };
    const lines = way(jobs, 'pushed');
    expect(first(lines)).toEqual(['refit rear wheel', 'tighten Rear spindle nut']);
    expect(lines[1]).toContain('new: split pin for Rear spindle nut');
  });
  test('what is away or lost is said to be', () => {
    const lines = way(
      {
        '2026-05-01-a':
          'work: [{sent out: front wheel, to: the wheel builder, promised: 2026-06-01}, {lost: rear brake rod}]',
      },
      'pushed',
    );
    expect(lines[0]).toBe('refit rear brake rod; it is lost: to get first');
    expect(lines[1]).toContain('wait for, then refit front wheel; at the wheel builder, promised for 2026-06-01');
    expect(lines[1]).toContain('tighten Front spindle nut: no value in the book, the blank stays open');
  });
  test('is nothing where nothing of it is off', () => {
    expect(way({ '2026-05-01-a': 'work: [{removed: carburettor}]' }, 'pushed')).toEqual([]);
  });
});

test('the hard order goes before the order of taking off, with its reason', () => {
  const lines = way(
    { '2026-05-01-a': 'work: [{removed: front forks}, {removed: front wheel, fasteners: {front-spindle-nut: 1}}]' },
    'pushed',
  );
  expect(lines[0]).toContain('refit front forks');
  expect(lines[0]).toContain('before what follows: a spindle pinched first holds the legs apart');
});
