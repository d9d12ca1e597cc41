// The pages of the site: every reference leads somewhere, long binders are split, our words follow the dialect.
import { describe, expect, test } from 'vitest';
import { prose } from '../../src/compose/prose.ts';
import { speaker } from '../../src/sheet/dialect.ts';
import { composePages } from '../../src/compose/pages.ts';
import { composeSheets } from '../../src/compose/sheets.ts';
import type { Job } from '../../src/records/model.ts';
import type { Page } from '../../src/sheet/sheet.ts';
import { blockText } from '../goldens/sheet-text.ts';
import { binderOf, day } from './binder.ts';

const today = '2026-11-21';
const pipit = binderOf('demo-bike', today);
const tern = binderOf('tests/fixtures/tern-350', today);

interface Reference {
  readonly from: string;
  readonly to: string;
}

/** Every `to` in a page, wherever it stands. */
function references(page: Page): readonly Reference[] {
  const found: Reference[] = [];
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('to' in value && typeof value.to === 'string' && 'text' in value) found.push({ from: page.file, to: value.to });
    for (const inner of Object.values(value)) walk(inner);
  };
  walk(page.blocks);
  return found;
}

function anchors(page: Page): readonly string[] {
  return page.blocks.flatMap((block) =>
    block.type === 'heading'
      ? [block.id]
      : block.type === 'table'
        ? block.rows.flatMap((row) => (row.kind === 'cells' && row.id !== undefined ? [row.id] : []))
        : [],
  );
}

describe.each([
  ['the demo', pipit],
  ['the fixture', tern],
] as const)('pages of %s', (_, binder) => {
  const pages = binder.pages.map((spec) => spec.make());
  const files = new Map(pages.map((page) => [page.file, new Set(anchors(page))]));
  const resolve = (to: string): string | undefined => {
    const kind = to.slice(0, to.indexOf(':'));
    const rest = to.slice(to.indexOf(':') + 1);
    if (kind === 'https' || kind === 'http' || kind === 'mailto') return undefined;
    const [file = '', hash] =
      kind === 'job'
        ? [`jobs/${rest}.html`]
        : kind === 'sheet'
          ? [`sheets/${rest}.html`]
          : kind === 'working'
            ? [binder.pages.find(({ workings }) => workings?.includes(rest) === true)?.file, rest]
            : rest.split('#');
    if (kind === 'print') return binder.sheets.some((sheet) => sheet.id === rest) ? undefined : to;
    if (kind === 'phone') return binder.book.plans.some(({ job }) => job.id === rest) ? undefined : to;
    const known = files.get(file);
    if (known === undefined) return to;
    return hash === undefined || known.has(hash) ? undefined : to;
  };
  test('every reference leads to a page and an anchor that exist', () => {
    const all = pages.flatMap(references);
    expect(all.length).toBeGreaterThan(100);
    expect(all.filter(({ to }) => resolve(to) !== undefined)).toEqual([]);
  });
  test('files are unique, each is what its specification says', () => {
    expect(new Set(binder.pages.map((spec) => spec.file)).size).toBe(binder.pages.length);
    for (const [index, spec] of binder.pages.entries()) {
      expect(pages[index]?.file).toBe(spec.file);
      expect(pages[index]?.title).toBe(spec.title);
    }
  });
  test('anchors are unique on every page', () => {
    for (const page of pages) {
      const ids = anchors(page);
      expect(
        ids.filter((id, index) => ids.indexOf(id) !== index),
        page.file,
      ).toEqual([]);
    }
  });
  test('the site has the pages that the work asks for', () => {
    for (const file of [
      'index.html',
      'log.html',
      'torque.html',
      'service.html',
      'measurements.html',
      'off.html',
      'parts.html',
      'costs.html',
      'workings.html',
      'sources.html',
      'problems.html',
      'sheets.html',
      'hold-points.html',
      'history.html',
    ])
      expect([...files.keys()]).toContain(file);
    for (const job of binder.book.records.jobs) expect(files.has(`jobs/${job.id}.html`), job.id).toBe(true);
    const paperOnly = new Set(
      binder.book.content.sheets.filter(({ on }) => !on.includes('screen')).map(({ id }) => id),
    );
    for (const { id } of binder.sheets) expect(files.has(`sheets/${id}.html`), id).toBe(!paperOnly.has(id));
  });
  test('no page prints a slip of the program', () => {
    for (const page of pages)
      expect(page.blocks.map(blockText).join('\n'), page.file).not.toMatch(/\bundefined\b|\bNaN\b|\[object /);
  });
});

describe('a long binder', () => {
  const [model] = pipit.book.records.jobs;
  const jobs = Array.from({ length: 700 }, (_, index): Job => {
    if (model === undefined) throw new Error('the demo has no record');
    const date = day(`20${String(10 + Math.floor(index / 350))}-${String(1 + (index % 12)).padStart(2, '0')}-05`);
    return { ...model, id: `long-${String(index)}`, date: { from: date, to: date } };
  });
  const book = { ...pipit.book, records: { ...pipit.book.records, jobs } };
  const pages = composePages(book, composeSheets(book, {}).value);
  test('has its log by year, a long year on several pages, each leading to the next', () => {
    const logs = pages.filter((page) => page.file.startsWith('log') && !page.file.includes('/'));
    expect(logs.map((page) => page.file)).toEqual([
      'log.html',
      ...['2011', '2010'].flatMap((year) => ['', '-2', '-3', '-4', '-5'].map((part) => `log-${year}${part}.html`)),
    ]);
    expect(logs[1]?.make().next).toEqual({ file: 'log-2011-2.html', title: expect.stringContaining('2011') });
    const headings = logs.slice(1).flatMap((page) => page.make().blocks.filter((block) => block.type === 'heading'));
    expect(headings.length).toBe(jobs.length);
  });
  test('is narrowed to one system and one kind of work, a line a record, on pages that follow each other', () => {
    const kind = model?.kind ?? '';
    const those = pages.filter((page) => page.file.startsWith(`log/kind-${kind}`)).map((page) => page.make());
    expect(those[0]?.next?.file).toBe(`log/kind-${kind}-2.html`);
    const named = those.flatMap(references).filter(({ to }) => to.startsWith('job:'));
    expect(new Set(named.map(({ to }) => to)).size).toBe(jobs.length);
    const log = pages.find((page) => page.file === 'log.html')?.make();
    expect(log === undefined ? [] : references(log).map(({ to }) => to)).toContain(`page:log/kind-${kind}.html`);
  });
  test('has the whole of a table that outgrew its page, year by year, and leads there', () => {
    const [entry] = pipit.book.costs.entries;
    if (entry === undefined) throw new Error('the demo has no costs');
    const entries = jobs.map((job) => ({ ...entry, job, day: job.date.from }));
    const long = { ...book, costs: { ...book.costs, entries } };
    const made = composePages(long, composeSheets(long, {}).value);
    const costs = made.filter((page) => page.file.startsWith('costs/')).map((page) => page.make());
    const inOrder = ['2011', '2010'].flatMap((year) =>
      ['', '-2', '-3', '-4', '-5'].map((more) => `costs/${year}${more}.html`),
    );
    expect(costs.map(({ file }) => file)).toEqual(inOrder);
    expect(costs.flatMap(references).filter(({ to }) => to.startsWith('job:')).length).toBe(jobs.length);
    const first = made.find((page) => page.file === 'costs.html')?.make();
    const to = first === undefined ? [] : references(first).map((reference) => reference.to);
    expect(to.filter((one) => one.startsWith('page:costs/'))).toEqual(['page:costs/2011.html', 'page:costs/2010.html']);
    expect(pages.filter((page) => page.file.startsWith('costs/'))).toEqual([]);
  });
  test('leads from the screen sheet of the history to the log instead of repeating it', () => {
    const history = pages.find((page) => page.file === 'sheets/history.html')?.make();
    expect(history?.blocks.length).toBeLessThan(100);
    expect(history?.blocks.map(blockText).join('\n')).toContain('pages of its own');
  });
});

describe('dialect', () => {
  const words = [
    { uk: 'tyre', us: 'tire' },
    { uk: 'earth', us: 'ground' },
    { uk: 'earth lead', us: 'ground cable' },
  ];
  test('British words stand as they are', () => {
    expect(speaker(words, 'uk')('Tyre and earth lead')).toBe('Tyre and earth lead');
  });
  test('American ones replace whole words, keep capitals, and take the longer pair first', () => {
    const say = speaker(words, 'us');
    expect(say('Tyre, tyre, TYRE, earth lead, earth; earthen')).toBe('Tire, tire, TIRE, ground cable, ground; earthen');
  });
  test('the owner’s words are never changed', () => {
    const american = binderOf('demo-bike', today, (files) =>
      files.map((file) =>
        file.file === 'machine.yaml' ? { ...file, text: file.text.replace('spelling: uk', 'spelling: us') } : file,
      ),
    );
    expect(american.book.records.machine.spelling).toBe('us');
    const text =
      american.pages
        .find((page) => page.file === 'sheets/before-first-start.html')
        ?.make()
        .blocks.map(blockText)
        .join('\n') ?? '';
    expect(text).toContain('Gasoline');
    expect(text).not.toContain('Petrol ');
    const { story } = american.book.records;
    const told = american.pages.find((page) => page.file === 'history.html')?.make().blocks;
    expect(told).toContainEqual({ type: 'prose', paragraphs: prose(story?.body ?? '') });
  });
});
