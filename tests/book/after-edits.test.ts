// What is kept from one reading of a machine to the next is right: after any edits of its files, pages, data and problems are what files read for the first time give.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { join } from 'node:path';
import { binderData, build, type Binder } from '../../src/build.ts';
import { packageFolder, readMachineFolder } from '../../src/disk.ts';
import type { Outcome } from '../../src/problem/problem.ts';
import { readContent } from '../../src/records/read-content.ts';
import type { Asset, SourceFile } from '../../src/source/files.ts';
import { contentWith, day } from '../views/binder.ts';

const content = readContent(contentWith());

function folder(name: string): { readonly files: readonly SourceFile[]; readonly assets: readonly Asset[] } {
  const read = readMachineFolder(join(packageFolder(), name)).value;
  if (read === undefined) throw new Error(`not a machine folder: ${name}`);
  return read;
}

type Made = Outcome<Binder | undefined>;

function make(files: readonly SourceFile[], assets: readonly Asset[], today: string): Made {
  return build({ files, assets, shared: [], content, before: [], today: day(today) });
}

/** Everything that a reader can see of a binder, each under its name. The same texts for what is the same. */
function shown({ value, problems }: Made): ReadonlyMap<string, string> {
  const all = new Map([['problems', JSON.stringify(problems)]]);
  if (value === undefined) return all;
  all.set('data', JSON.stringify(binderData(value.book)));
  for (const { file, section, make: page } of value.pages) {
    // No record changes these, and to make them is half of the work.
    if (section === 'Manual' || file.startsWith('tables/')) continue;
    all.set(file, JSON.stringify(page()));
  }
  for (const sheet of value.sheets) all.set(`print of ${sheet.id}`, JSON.stringify({ ...sheet, blocks: sheet.blocks }));
  return all;
}

interface Edit {
  readonly what: keyof typeof edits;
  /** Chooses the file, and the place in it. */
  readonly file: number;
  readonly at: number;
  readonly to: number;
}

const isJob = ({ file }: SourceFile): boolean => file.startsWith('jobs/');

/** One of the matches of a pattern, put in another's place; the text as it is where there is none. */
function changed(text: string, pattern: RegExp, at: number, to: (found: string) => string): string {
  const found = [...text.matchAll(pattern)];
  const one = found[at % Math.max(1, found.length)];
  if (one === undefined) return text;
  return text.slice(0, one.index) + to(one[0]) + text.slice(one.index + one[0].length);
}

const date = (to: number): string =>
  `2026-${String((to % 12) + 1).padStart(2, '0')}-${String((to % 28) + 1).padStart(2, '0')}`;
const states = ['done', 'planned', 'under way', 'waiting'] as const;

/** The text of a file after an edit; undefined takes the file away. */
const edits = {
  title: (text: string, { at }: Edit) => text.replace(/^title: .*$/mu, `title: Written anew ${String(at)}`),
  date: (text: string, { to }: Edit) => text.replace(/^date: .*$/mu, `date: ${date(to)}`),
  state: (text: string, { to }: Edit) =>
    text.replace(/^state: .*$/mu, `state: ${states[to % states.length] ?? 'done'}`),
  'a number': (text: string, { at, to }: Edit) =>
    changed(text, /(?<=[ {:,])\d+(?=[ .,}\n])/gu, at, () => String(to % 97)),
  'a line less': (text: string, { at }: Edit) => changed(text, /^ {2}- .*\n/gmu, at, () => ''),
  'a line twice': (text: string, { at }: Edit) => changed(text, /^ {2}- \{.*\}\n/gmu, at, (line) => line + line),
  'a verb': (text: string, { at }: Edit) =>
    changed(text, /(?<=- \{?)(?:removed|refitted|loosened|tightened)(?=:)/gu, at, (verb) =>
      verb === 'removed' ? 'refitted' : 'removed',
    ),
  body: (text: string, { at }: Edit) => `${text}\nAnd this was seen later: ${String(at)}.\n`,
  away: () => undefined,
} as const satisfies Readonly<Record<string, (text: string, edit: Edit) => string | undefined>>;

/** A file like another beside it, under a name and a day of its own. */
function copyOf(source: SourceFile, { at, to }: Edit): SourceFile {
  return {
    ...source,
    file: `jobs/${date(to)}-copied-${String(at)}.md`,
    text: edits.date(source.text, { what: 'date', file: 0, at, to }),
  };
}

function edited(files: readonly SourceFile[], edit: Edit): readonly SourceFile[] {
  // Every third edit is of the machine, the maker's data or another file that is no record.
  const others = files.filter((one) => !isJob(one));
  const pool = edit.file % 3 === 0 && edit.what === 'a number' ? others : files.filter(isJob);
  const source = pool[edit.file % Math.max(1, pool.length)];
  if (source === undefined) return files;
  const text = edits[edit.what](source.text, edit);
  if (edit.what === 'away' && edit.at % 2 === 0) return [...files, copyOf(source, edit)];
  if (text === undefined) return files.filter((one) => one !== source);
  // Only a file that was written to comes as another object: so it is while a binder is served.
  return text === source.text ? files : files.map((one) => (one === source ? { ...one, text } : one));
}

const anyEdit: fc.Arbitrary<Edit> = fc.record({
  what: fc.constantFrom(...(Object.keys(edits) as (keyof typeof edits)[])),
  file: fc.nat(1000),
  at: fc.nat(1000),
  to: fc.nat(1000),
});

const machines = [
  { name: 'demo-bike', today: '2026-11-14' },
  { name: 'tests/fixtures/tern-350', today: '2026-06-01' },
] as const;

test.each(machines)('gives what is read for the first time, after any edits of $name', ({ name, today }) => {
  const { files: first, assets } = folder(name);
  fc.assert(
    fc.property(fc.array(anyEdit, { minLength: 8, maxLength: 8 }), (list) => {
      let files = first.map((file) => ({ ...file }));
      shown(make(files, assets, today));
      // All edits come before anything is made afresh, so that nothing that was kept is put right between them.
      const steps = list.map((edit, index) => {
        files = [...edited(files, edit)];
        const on = index === 5 ? '2026-12-01' : today;
        return { edit, files, on, seen: shown(make(files, assets, on)) };
      });
      for (const { edit, files: now, on, seen } of steps) {
        const afresh = now.map((file) => ({ ...file }));
        const fresh = shown(make(afresh, assets, on));
        const stale = [...fresh].filter(([file, text]) => seen.get(file) !== text).map(([file]) => file);
        expect([edit, stale, [...seen.keys()]]).toEqual([edit, [], [...fresh.keys()]]);
      }
    }),
    { numRuns: 2 },
  );
});

test('keeps what a changed title leaves as it was', () => {
  const { files, assets } = folder('demo-bike');
  const before = make(files, assets, '2026-11-14').value?.book;
  const job = before?.records.jobs.find(({ readings }) => readings.length > 0);
  const now = files.map((one) => (one.file === job?.file ? { ...one, text: `${one.text}\nMore words.\n` } : one));
  const after = make(now, assets, '2026-11-14').value?.book;
  if (before === undefined || after === undefined || job === undefined) throw new Error('no book');
  expect(after.odometer).toBe(before.odometer);
  const points = new Set(before.series.flatMap((one) => one.points));
  const fresh = after.series.flatMap((one) => one.points).filter((point) => !points.has(point));
  // Points of a record that was read anew lead to it as it is now; those of one that a later record corrects are judged at the end.
  const corrected = new Set(before.records.jobs.flatMap(({ corrections }) => corrections.map(({ record }) => record)));
  const anew = after.records.jobs.filter(({ id, file }) => file === job.file || corrected.has(id));
  expect(fresh.length).toBeGreaterThan(0);
  expect(fresh.filter((point) => !anew.includes(point.job))).toEqual([]);
  const touched = after.series.filter(({ points: all }) => all.some((point) => anew.includes(point.job)));
  expect(after.series.filter((one) => !before.series.includes(one))).toEqual(touched);
});
