// The first page names the sheets to print next: of planned jobs in the order of the work, of what is due, each leading to its PDF.
import { describe, expect, it } from 'vitest';
import { makerFile, record, smallBinder } from './small-folder.ts';

type Files = Readonly<Record<string, string>>;

/** What the sheets to print are on the first page: the ids that its links lead to. */
function named(files: Files): readonly string[] {
  const page = smallBinder(files).pages.find(({ file }) => file === 'index.html');
  const facts = page?.make().blocks.flatMap((block) => (block.type === 'facts' ? block.facts : [])) ?? [];
  const value = facts.find(({ name }) => name === 'Planned, and sheets to print')?.value ?? [];
  if (typeof value === 'string') throw new Error('the line has no link');
  return value.flatMap((one) => (typeof one !== 'string' && one.kind === 'link' ? [one.to] : []));
}

const planned = (kind: string): string =>
  record(
    `title: Planned\ndate: 2026-12-05\nkind: ${kind}\nstate: planned\nprocedures: [wheel-rear-out]\nreadings: [{item: rear tread}]`,
  );
const oilDue = makerFile('services:\n  - {id: oil, item: Gearbox oil, do: renew, every: 6 months}');
const oilDone = record('title: Oil\ndate: 2025-01-05\nkind: service\nstate: done\nservices: [oil]');

describe('next sheets to print', () => {
  it('are those of a planned job, off before measured before on', () => {
    expect(named({ 'jobs/2026-12-05-wheel.md': planned('repair') }).slice(0, 4)).toEqual([
      'job:2026-12-05-wheel',
      'print:teardown-2026-12-05-wheel',
      'print:measuring-2026-12-05-wheel',
      'print:assembly-2026-12-05-wheel',
    ]);
  });
  it('are none that would say only that there is nothing: no reading is asked for, nothing goes together', () => {
    const bare = record('title: Plugs\ndate: 2026-12-05\nkind: repair\nstate: planned');
    const links = named({ 'jobs/2026-12-05-plugs.md': bare });
    expect(links.filter((one) => one.endsWith('plugs'))).toEqual([
      'job:2026-12-05-plugs',
      'print:teardown-2026-12-05-plugs',
    ]);
    const seal = record('title: Seal\ndate: 2026-12-05\nkind: repair\nstate: planned\nwork: [{removed: clutch cover}]');
    expect(named({ 'jobs/2026-12-05-seal.md': seal })).toContain('print:assembly-2026-12-05-seal');
  });
  it('are those of the machine that the record of the job keeps as well', () => {
    expect(named({ 'jobs/2026-12-05-start.md': planned('first start') })).toContain('print:before-first-start');
  });
  it('are the service sheet where something is due, and once where a service is planned as well', () => {
    expect(named({ 'maker/book.yaml': oilDue, 'jobs/2025-01-05-oil.md': oilDone })).toContain('print:service-sheet');
    const both = {
      'maker/book.yaml': oilDue,
      'jobs/2025-01-05-oil.md': oilDone,
      'jobs/2026-12-05-s.md': planned('service'),
    };
    expect(named(both).filter((one) => one === 'print:service-sheet')).toHaveLength(1);
  });
  it('are what to get where a part is wanted, and end with how many jobs more are planned', () => {
    const jobs = [1, 2, 3, 4].map((day) => [`jobs/2026-12-0${String(day)}-job.md`, planned('repair')]);
    const wanted = record(
      'title: Seal\ndate: 2026-11-01\nkind: repair\nstate: done\nparts: [{part: seal, state: wanted}]',
    );
    const links = named({ ...Object.fromEntries(jobs), 'jobs/2026-11-01-seal.md': wanted });
    expect(links).toContain('print:parts-to-get');
    expect(links).not.toContain('print:teardown-2026-12-04-job');
    expect(links.at(-1)).toBe('page:sheets.html');
  });
});
