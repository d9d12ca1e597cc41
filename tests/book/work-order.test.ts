// What must come first: the order of work over the open jobs, from the content's own edges, and rings in them.
import { describe, expect, it } from 'vitest';
import { workOrder } from '../../src/book/work-order.ts';
import { readContentFolder } from '../../src/disk.ts';
import { readContent } from '../../src/records/read-content.ts';
import { record, sheetSays, smallBinder } from '../views/small-folder.ts';

const planned = (id: string, title: string, lines: string): Readonly<Record<string, string>> => ({
  [`jobs/${id}.md`]: record(`title: ${title}\ndate: ${id.slice(0, 10)}\nkind: setting up\nstate: planned\n${lines}`),
});
const done = (id: string, lines: string): Readonly<Record<string, string>> => ({
  [`jobs/${id}.md`]: record(`title: Done ${id}\ndate: ${id.slice(0, 10)}\nkind: setting up\nstate: done\n${lines}`),
});
const first = (files: Readonly<Record<string, string>>, id: string): readonly string[] | undefined =>
  workOrder(smallBinder(files).book)
    .jobs.find((one) => one.job.id === id)
    ?.first.map((one) => one.step.id);

const timing = planned('2026-12-05-timing', 'Timing', 'readings: [{item: ignition timing}]');

describe('what must come first', () => {
  it('is the gap before the timing, until the gap is on record', () => {
    expect(first(timing, '2026-12-05-timing')).toEqual(['gap-set']);
    const gap = done('2026-11-01-gap', 'readings: [{item: points gap, left: 0.35 mm}]');
    expect(first({ ...timing, ...gap }, '2026-12-05-timing')).toEqual([]);
  });
  it('reaches as far back as the edges lead, and names what undid a proof', () => {
    const start = planned('2026-12-06-start', 'Start', 'procedures: [first-start]');
    const oiled = done('2026-11-01-oiled', 'checks: [bores-oiled]');
    const all = first({ ...start, ...oiled }, '2026-12-06-start') ?? [];
    expect(all).not.toContain('bores-oiled');
    expect(all).toEqual(
      expect.arrayContaining(['turned-over', 'gap-set', 'timing-set', 'float-valve-tested', 'stop-switch-proved']),
    );
    expect(all.indexOf('gap-set')).toBeLessThan(all.indexOf('timing-set'));
    const laid = { 'jobs/2026-11-10-laid.md': record('title: Laid up\ndate: 2026-11-10\nkind: lay-up\nstate: done') };
    const again = workOrder(smallBinder({ ...start, ...oiled, ...laid }).book).jobs[0]?.first;
    expect(again?.find((one) => one.step.id === 'bores-oiled')?.but).toMatch(/undone by lay-up/u);
  });
  it('is to be done again after work that undoes it, though no check speaks of it', () => {
    const road = {
      'jobs/2026-12-10-ride.md': record(
        'title: First ride\ndate: 2026-12-10\nkind: ride\nstate: planned\nride: {where: private land}',
      ),
    };
    const spindle = done(
      '2026-10-01-spindle',
      'work: [{removed: front wheel}, {refitted: front wheel}, {tightened: front-spindle-nut}]',
    );
    const maker = {
      'maker/book.yaml':
        'splitpin: 1\nsource: {title: Book, page: "1"}\nfasteners:\n  - {id: front-spindle-nut, name: Front spindle nut, thread: M14x1.5, torque: 60 N·m}\n',
    };
    const open = (files: Readonly<Record<string, string>>) => first({ ...road, ...maker, ...files }, '2026-12-10-ride');
    expect(open({})).toContain('front-axle-tightened');
    expect(open(spindle)).not.toContain('front-axle-tightened');
    const again = done('2026-11-01-tyre', 'work: [{removed: front wheel}, {refitted: front wheel}]');
    expect(open({ ...spindle, ...again })).toContain('front-axle-tightened');
    const told = workOrder(smallBinder({ ...road, ...maker, ...spindle, ...again }).book).jobs[0]?.first;
    expect(told?.find((one) => one.step.id === 'front-axle-tightened')?.but).toBe('undone by front wheel removed');
  });
  it('leaves out what is not for this machine: this one has no tappets', () => {
    const strip = planned('2026-12-07-strip', 'Top end', 'procedures: [top-end-strip-two-stroke]');
    const all = first(strip, '2026-12-07-strip') ?? [];
    expect(all).toContain('compression-read');
    expect(all).not.toContain('valve-clearance');
  });
  it('puts all open jobs into one order and says which holds each step', () => {
    const gap = planned('2026-12-09-gap', 'Gap', 'readings: [{item: points gap}]');
    const binder = smallBinder({ ...timing, ...gap });
    expect(workOrder(binder.book).steps.map((one) => [one.step.id, one.jobs.map((job) => job.title)])).toEqual([
      ['gap-set', ['Gap']],
      ['timing-set', ['Timing']],
    ]);
    expect(sheetSays(binder, 'order-of-work')).toMatch(/Points gap set.*Gap.*the gap moves the timing/u);
  });
  it('says what must come after: the brake after the spindle', () => {
    const wheel = planned('2026-12-08-wheel', 'Rear wheel', 'procedures: [wheel-rear-out]');
    const [told] = workOrder(smallBinder(wheel).book).jobs;
    expect(told?.after.map((one) => one.step.id)).toEqual(['brake-pedal-set']);
    expect(sheetSays(smallBinder(wheel), 'teardown-2026-12-08-wheel')).toContain(
      'moving the rear wheel moves brake and stop switch',
    );
  });
  it('is no open job’s that a later record goes on with', () => {
    const aside = {
      'jobs/2026-11-01-aside.md': record(
        'title: Aside\ndate: 2026-11-01\nkind: assembly\nstate: put aside\nreadings: [{item: ignition timing}]',
      ),
    };
    expect(first(aside, '2026-11-01-aside')).toEqual(['gap-set']);
    expect(
      first({ ...aside, ...done('2026-11-02-on', 'continues: 2026-11-01-aside') }, '2026-11-01-aside'),
    ).toBeUndefined();
  });
});

describe('the order of work as content', () => {
  const order = (edges: string): string =>
    `---\norder: o\ntitle: O\nsteps: [{id: a, step: A}, {id: b, step: B}, {id: c, step: C}]\nedges:\n${edges}\n---\n`;
  const problems = (edges: string) => readContent([{ file: 'content/order/o.md', text: order(edges) }]).problems;
  const edge = (before: string, after: string): string => `  - {before: ${before}, after: ${after}, why: so}`;
  it('refuses a ring, naming its way and its places', () => {
    const [ring, ...others] = problems([edge('a', 'b'), edge('b', 'c'), edge('c', 'a')].join('\n'));
    expect(others).toEqual([]);
    expect(ring).toMatchObject({
      code: 'order-in-a-ring',
      message: 'a → b → c → a: it would have to come before itself.',
    });
    expect(ring?.at).toEqual({ file: 'content/order/o.md', path: ['edges', 2, 'after'] });
    expect(ring?.also?.map(({ at }) => at.path)).toEqual([
      ['edges', 0],
      ['edges', 1],
    ]);
    expect(problems(edge('b', 'b'))[0]?.code).toBe('order-in-a-ring');
  });
  it('lets two ways lead to one step', () => {
    expect(problems([edge('a', 'b'), edge('b', 'c'), edge('a', 'c')].join('\n'))).toEqual([]);
  });
  it('names the nearest step of one that there is not', () => {
    const real = readContentFolder().map((file) =>
      file.file.endsWith('hard-order.md')
        ? { ...file, text: file.text.replace('before: gap-set', 'before: gap-sett') }
        : file,
    );
    expect(readContent(real).problems[0]).toMatchObject({ code: 'reference-unknown', hint: 'Did you mean “gap-set”?' });
  });
});
