// A machine adds checks, cautions, procedures and edges of its own; whatever takes away or softens is refused at its place.
import { describe, expect, it } from 'vitest';
import { build, readContent } from '../../src/build.ts';
import { readContentFolder } from '../../src/disk.ts';
import { fenced } from '../manual/fenced.ts';
import { manualPage } from '../manual/manual-folder.ts';
import { day } from '../views/binder.ts';
import { machineFile, record } from '../views/small-folder.ts';

const content = readContent(readContentFolder());

function made(given: Readonly<Record<string, string>>) {
  const files = Object.entries({ 'machine.yaml': machineFile, ...given }).map(([file, text]) => ({ file, text }));
  return build({ files, assets: [], shared: [], content, before: [], today: day('2026-11-25') });
}
const head = (text: string): string => `---\n${text}\n---\n`;
const point = (check: string, more = ''): Readonly<Record<string, string>> => ({
  'hold-points/mine.md': head(`hold point: before-turning\n${more}checks:\n  - ${check}`),
});
const told = (
  given: Readonly<Record<string, string>>,
): readonly (readonly [string, string, readonly (string | number)[]])[] =>
  made(given)
    .problems.filter(({ severity }) => severity === 'problem')
    .map(({ code, at }) => [code, at.file, at.path]);
const stateOf = (given: Readonly<Record<string, string>>, check: string): string | undefined =>
  made(given)
    .value?.book.holds.flatMap((hold) => hold.checks)
    .find((one) => one.check.id === check)?.state;

describe('a machine adds', () => {
  const own = point('{id: prop-stand-tied, check: Prop stand tied up, why: it drops and locks the gear, proof: look}');
  const done = {
    'jobs/2026-11-01-tied.md': record(
      'title: Tied\ndate: 2026-11-01\nkind: waking\nstate: done\nchecks: [prop-stand-tied, bores-oiled]',
    ),
  };
  it('a check that holds its point and is ticked by a record like any other', () => {
    expect(told(own)).toEqual([]);
    expect(stateOf(own, 'prop-stand-tied')).toBe('not proved');
    expect(stateOf({ ...own, ...done }, 'prop-stand-tied')).toBe('proved');
    expect(stateOf({ ...own, ...done }, 'bores-oiled')).toBe('proved');
  });
  it('what undoes a known check, and what a known procedure disturbs', () => {
    const washed = {
      'jobs/2026-11-02-washed.md': record(
        'title: Washed\ndate: 2026-11-02\nkind: cleaning\nstate: done\nwork: [{removed: air cleaner}]\nprocedures: [fork-oil]',
      ),
    };
    const undo = point('{id: bores-oiled, undone by: [air cleaner]}');
    expect(told(undo)).toEqual([]);
    expect(
      stateOf(
        { ...done, ...own, ...undo, ...washed, 'hold-points/two.md': own['hold-points/mine.md'] ?? '' },
        'bores-oiled',
      ),
    ).toBe('undone');
    const disturbs = { 'procedures/fork-oil.md': head('procedure: fork-oil\ndisturbs: [spark plugs]') };
    const without = { ...own, ...done, ...washed };
    expect(stateOf(without, 'prop-stand-tied')).toBe('proved');
    const mine = point(
      '{id: prop-stand-tied, check: Prop stand tied up, why: so, proof: look, undone by: [spark plugs]}',
    );
    expect(stateOf({ ...without, ...mine }, 'prop-stand-tied')).toBe('proved');
    expect(stateOf({ ...without, ...mine, ...disturbs }, 'prop-stand-tied')).toBe('undone');
  });
  it('a point, a caution, a procedure, a schedule and an edge of its own', () => {
    const all = {
      'hold-points/loading.md': head(
        'hold point: before-loading\ntitle: Before it goes on the trailer\norder: 20\nchecks:\n  - {id: tap-off, check: Tap off, why: it drips, proof: done, caution: ramp}',
      ),
      'cautions/mine.md': head('cautions:\n  - {id: ramp, grade: WARNING, line: The ramp tips when walked on alone.}'),
      'procedures/sidecar.md': head(
        'procedure: sidecar-off\ntitle: Sidecar off\nsteps:\n  - {do: Chock it, off: [sidecar], caution: ramp}',
      ),
      'schedules/sidecar.md': head(
        'schedule: sidecar\ntitle: Sidecar\nservices:\n  - {id: sidecar-bolts, item: Sidecar bolts, do: tighten, every: 3 months}',
      ),
      'order/mine.md': head(
        'order: mine\ntitle: Mine\nsteps: [{id: sidecar, step: Sidecar off, by: [sidecar-off]}]\nedges:\n  - {before: sidecar, after: rear-axle-tightened, why: it is in the way}',
      ),
      'jobs/2026-11-01-off.md': record(
        'title: Off\ndate: 2026-11-01\nkind: strip\nstate: planned\nprocedures: [sidecar-off]\nservices: [sidecar-bolts]',
      ),
    };
    expect(told(all)).toEqual([]);
    const book = made(all).value?.book;
    expect(book?.holds.map((hold) => hold.point.id)).toContain('before-loading');
    expect(book?.due.map((line) => line.service.id)).toContain('sidecar-bolts');
    expect(book?.plans[0]?.procedures.map((one) => one.title)).toEqual(['Sidecar off']);
    expect(book?.recordsVersion).not.toBe(
      made({ 'jobs/2026-11-01-off.md': all['jobs/2026-11-01-off.md'] }).value?.book.recordsVersion,
    );
  });
});

describe('the page of formats', () => {
  it('has an example that is read without a problem', () => {
    const example = fenced(manualPage('formats.md')).find(({ text }) => text.includes('prop-stand-tied'));
    expect(told({ 'hold-points/mine.md': example?.text ?? '' })).toEqual([]);
    expect(stateOf({ 'hold-points/mine.md': example?.text ?? '' }, 'prop-stand-tied')).toBe('not proved');
  });
});

describe('an order of its own that closes a ring', () => {
  it('is refused at its own edge, wherever the ring is entered', () => {
    for (const [before, after] of [
      ['on-the-road', 'insured'],
      ['ride', 'chain-set'],
      ['live-kick', 'bores-oiled'],
    ])
      expect(
        told({
          'order/mine.md': head(`order: mine\ntitle: Mine\nedges: [{before: ${before}, after: ${after}, why: so}]`),
        }),
      ).toEqual([['order-in-a-ring', 'order/mine.md', ['edges', 0, 'after']]]);
  });
});

describe('what would soften is refused at its place', () => {
  const file = 'hold-points/mine.md';
  it.each([
    ['check', '{id: bores-oiled, check: Oil if you like}'],
    ['why', '{id: bores-oiled, why: they say so}'],
    ['proof', '{id: bores-oiled, proof: look}'],
    ['applies', '{id: bores-oiled, applies: {stroke: four}}'],
    ['each time', '{id: bores-oiled, each time: yes}'],
    ['good for', '{id: gearbox-oil-there, good for: 24 months}'],
  ])('%s of a check', (key, check) => {
    expect(told(point(check))).toEqual([['content-weakened', file, ['checks', 0, key]]]);
  });
  it('lets a proof run out sooner', () => {
    expect(told(point('{id: gearbox-oil-there, good for: 3 months or 500 mi}'))).toEqual([]);
  });
  it('title, order and features of a point, and a check of another point', () => {
    const fine = '{id: mine, check: C, why: W, proof: look}';
    expect(told(point(fine, 'order: 9\n'))).toEqual([['content-weakened', file, ['order']]]);
    expect(told(point(fine, 'applies: {stroke: four}\n'))).toEqual([['content-weakened', file, ['applies']]]);
    expect(told(point('{id: insured, check: Never mind, why: W, proof: look}'))).toEqual([
      ['content-weakened', file, ['checks', 0, 'id']],
    ]);
  });
  it('a WARNING regraded or in other words', () => {
    const petrol = content.value.cautions.get('petrol');
    const caution = (grade: string, line: string) => ({
      'cautions/mine.md': head(`cautions:\n  - {id: petrol, grade: ${grade}, line: ${JSON.stringify(line)}}`),
    });
    expect(petrol?.grade).toBe('WARNING');
    expect(told(caution('NOTE', petrol?.line ?? ''))).toEqual([
      ['content-weakened', 'cautions/mine.md', ['cautions', 0, 'grade']],
    ]);
    expect(told(caution('WARNING', 'Petrol smells.'))).toEqual([
      ['content-weakened', 'cautions/mine.md', ['cautions', 0, 'line']],
    ]);
    expect(told(caution('WARNING', petrol?.line ?? ''))).toEqual([]);
  });
  it('steps and cautions of a procedure, and a line of a general schedule', () => {
    const steps = { 'procedures/fork-oil.md': head('procedure: fork-oil\nsteps:\n  - {do: Leave it}') };
    expect(told(steps)).toEqual([['content-weakened', 'procedures/fork-oil.md', ['steps']]]);
    const line = {
      'schedules/mine.md': head(
        'schedule: mine\ntitle: Mine\nservices:\n  - {id: fuel-hose, item: Fuel hose, do: renew, every: 480 months}',
      ),
    };
    expect(told(line)).toEqual([['content-weakened', 'schedules/mine.md', ['services', 0, 'id']]]);
  });
  it('and what is not written out in full is no new check', () => {
    expect(told(point('{id: mine, check: Only words}')).map(([code]) => code)).toEqual(['key-missing', 'key-missing']);
  });
});
