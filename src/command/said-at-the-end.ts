// What a finished build says: what it wrote, where, and what needs a person's eye.
import { join, relative } from 'node:path';
import type { Binder } from '../build.ts';
import type { Aside } from '../cache/aside.ts';
import type { Problem } from '../problem/problem.ts';
import { count } from './count.ts';
import { noTypeface } from './no-typeface.ts';
import type { ReadMachine } from './read-machine.ts';
import type { Prints } from './write-prints.ts';

export interface Finished {
  readonly read: ReadMachine;
  readonly binder: Binder;
  readonly aside: Aside;
  readonly prints: Prints;
  readonly photos: number;
}

/** Stands for the output folder in what is kept, so that a binder handed on tells nothing of where it was made. */
const outMark = '{binder}';

/** What is kept of a build's end, said with the way to the output folder from here. */
export function withWay(said: readonly string[], out: string): readonly string[] {
  const way = shortest(out);
  return said.map((line) => line.replaceAll(outMark, way));
}

/** The lines, to be said through `withWay`. */
export function saidAtTheEnd(finished: Finished): readonly string[] {
  return [...whatAndWhere(finished), ...forYourEye(finished)];
}

function whatAndWhere({ read, binder, aside, prints, photos }: Finished): readonly string[] {
  const { machine } = binder.book.records;
  const paper = prints.marks.reduce((sum, mark) => sum + mark.pages, 0);
  const made = [
    count(binder.pages.length, 'page'),
    count(prints.marks.length, 'sheet') + ' on ' + count(paper, 'side') + ' of paper',
    count(photos, 'photo'),
  ];
  const lines = [
    `${machine.name}: ${made.join(', ')}, from ${count(binder.book.records.jobs.length, 'record')} in ${read.folder.name}`,
    `  ${join(outMark, 'index.html')}    begin here`,
  ];
  if (prints.marks.length > 0) {
    lines.push(`  ${join(outMark, 'print')}    the sheets as PDF`);
    lines.push(`  ${join(outMark, 'data', 'binder.json')}    everything computed, with units and origins`);
  }
  lines.push(
    `  ${count(aside.written.length, 'file')} written, ${count(aside.outputs.size - aside.written.length, 'file')} unchanged`,
  );
  return lines;
}

function forYourEye({ read, binder, prints }: Finished): readonly string[] {
  const { book } = binder;
  const held = book.holds.filter((hold) => !hold.clear);
  const overdue = book.due.filter((line) => line.state === 'overdue');
  const lines = [
    ...held.map((hold) => {
      const open = hold.checks.filter((check) => check.state === 'not proved' || check.state === 'undone').length;
      return `held: ${hold.point.title} (${count(open, 'check')} not proved)`;
    }),
    ...(book.off.open.length > 0 ? [count(book.off.open.length, 'thing') + ' still off, loose, empty or open'] : []),
    ...(overdue.length > 0 ? [count(overdue.length, 'service') + ' overdue'] : []),
    ...queryLines(read.problems),
    ...prints.missing.map(({ sheet, characters }) => noTypeface(sheet, characters)),
  ];
  return lines.length === 0 ? [] : ['Needs your eye:', ...lines.map((line) => '  ' + line)];
}

/** So many queries are told here; all of them stand in the binder, and `check` shows their lines. */
const mostQueries = 8;

function queryLines(queries: readonly Problem[]): readonly string[] {
  const told = queries.slice(0, mostQueries).map((query) => `${query.at.file}: ${query.message}`);
  const rest = queries.length - told.length;
  return rest === 0 ? told : [...told, count(rest, 'more query', 'more queries') + ', on the page “To look at”'];
}

/** The way to a folder as a person would write it here. */
function shortest(path: string): string {
  const way = relative(process.cwd(), path);
  return way.startsWith('..') || way === '' ? path : way;
}
