// The life of a part, told from the records that speak of it; and the system that a thing belongs to.
import { describe, expect, test } from 'vitest';
import { hasLife, isTold, partLives } from '../../src/book/part-lives.ts';
import { systemsOfJobs } from '../../src/book/systems-of-job.ts';
import { systemOf } from '../../src/book/systems.ts';
import { evening } from '../evenings/evening.ts';
import { wagtailBook } from '../evenings/wagtail-book.ts';

const made = evening(
  '2026-05-20',
  {
    '2026-05-01-off': `title: Wheel out
kind: strip
work: [{removed: rear wheel, bag: 4}, {removed: split pin, bag: 4}]
readings: [{item: bore, found: 56.05 mm}]`,
    '2026-05-02-on': `title: Wheel in
kind: assembly
work: [{refitted: the rear wheels, from bag: 4}, {drained: gearbox oil}]
parts: [{part: rear wheel bearing, state: fitted}]`,
    '2026-05-30-planned': 'title: Later\nkind: service\nstate: planned\nwork: [{removed: rear wheel}]',
  },
  { maker: wagtailBook() },
);
const lives = partLives(made.book);
const life = (key: string): (typeof lives)[number] | undefined => lives.find((one) => one.key === key);

describe('the life of a part', () => {
  test('has its lines in the order of the work, however it was called, and nothing that is only planned', () => {
    const lines = life('rear wheel')?.lines.map(({ job, ...line }) =>
      line.kind === 'work' ? `${job.id} ${line.entry.verb}` : job.id,
    );
    expect(lines).toEqual(['2026-05-01-off removed', '2026-05-02-on refitted']);
  });
  test('says what is open on it now', () => {
    expect(life('rear wheel')?.open).toEqual([]);
    expect(life('split pin')?.open.map(({ state, entry }) => [state, entry.bag])).toEqual([['off', '4']]);
    expect(life('gearbox oil')?.open.map(({ state }) => state)).toEqual(['empty']);
  });
  test('is told where more than the fitting is recorded, and has a page where two records speak of it', () => {
    const wheel = life('rear wheel');
    const bearing = life('rear wheel bearing');
    const pin = life('split pin');
    expect([wheel, bearing, pin].map((one) => one !== undefined && isTold(one))).toEqual([true, false, true]);
    expect([wheel, pin].map((one) => one !== undefined && hasLife(one))).toEqual([true, false]);
    expect(made.page('part-by-part/rear-wheel.html')).toMatch(/1 May 2026 \| removed \| bag 4/u);
    expect(made.page('part-by-part.html')).toMatch(/Split pin \| 1 \| 1 May 2026 \| off, bag 4/iu);
    expect(made.page('part-by-part/only-fitted-1.html')).toContain('Rear wheel bearing: 2 May 2026');
  });
});

describe('the system of a thing', () => {
  test.each([
    ['cam chain', 'engine'],
    ['rear chain', 'final-drive'],
    ['exhaust valve', 'engine'],
    ['exhaust port gasket', 'exhaust'],
    ['valve clearance, exhaust', 'engine'],
    ['clutch plates', 'gearbox'],
    ['number plate', 'papers'],
    ['Front-Brake-Shoes', 'brakes'],
    ['tires', 'wheels'],
    ['gizmo', 'other'],
  ])('%s: %s', (thing, id) => {
    expect(systemOf(thing).id).toBe(id);
  });
  test('a record is about the systems of the things it names, and of its title only where it names none', () => {
    const [job] = made.book.records.jobs;
    const of = systemsOfJobs(made.book);
    const ids = job === undefined ? [] : [...(of.get(job) ?? [])].map((system) => system.id);
    expect(ids).toContain('wheels');
    expect(ids).toContain('engine');
    expect(made.page('log/of-wheels.html')).toMatch(/2 May 2026 {2}Wheel in, assembly/u);
  });
});
