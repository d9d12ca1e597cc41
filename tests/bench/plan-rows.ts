// The plan of an evening over two hundred open jobs, with parts, helpers, an order of their own and the hard order; and the list of what to get.
import { makeBook } from '../../src/book/make.ts';
import { eveningOf } from '../../src/book/plan/evening.ts';
import { shoppingList } from '../../src/book/shopping/shopping-list.ts';
import { readContentFolder } from '../../src/disk.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { readContent } from '../../src/records/read-content.ts';
import { readRecords } from '../../src/records/read.ts';
import { median, type Line } from './rows.ts';

const jobs = 200;
const most = 50;
const procedures = ['points-and-timing', 'wheel-rear-out', 'carburettor-clean', 'fork-oil', 'brake-shoes-drum'];
const machine = `splitpin: 1
name: Bench machine
make: Bench
model: One
features: {stroke: two, cylinders: 1, lubrication: premix, ignition: magneto, trigger: points, battery: no, lamps: yes, front brake: drum, rear brake: drum, final drive: chain, wheels: spoked}
currency: GBP
`;

function id(index: number): string {
  return `2026-06-01-job-${String(index).padStart(3, '0')}`;
}

/** Every job waits for one before it and for a part; every fifth takes two. The same index gives the same bytes. */
function jobFile(index: number): string {
  const after = index === 0 ? '' : `after: [${id(Math.floor(index / 2))}]\n`;
  const state = index % 3 === 0 ? 'here' : 'ordered';
  return `---
title: Job ${String(index)}
date: 2026-06-01
kind: repair
state: planned
takes: ${String(10 + (index % 50))} min
helper: ${index % 5 === 0 ? 'yes' : 'no'}
procedures: [${procedures[index % procedures.length] ?? ''}]
${index > 1 ? after : ''}parts: [{part: part ${String(index % 90)}, from: shop ${String(index % 7)}, state: ${state}}]
---
`;
}

/** Processor time in milliseconds of the middle of some turns, the first of them cold. */
function timed(work: () => void): number {
  const turns = Array.from({ length: 9 }, () => {
    const begun = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1000;
  });
  return median(turns);
}

function line(work: string, measured: number): Line {
  return { work, against: 'a bound', measured, must: most, aim: most / 2, better: 'less', unit: 'ms' };
}

/** Both rows of the plan. */
export function planRows(): readonly Line[] {
  const files = [
    { file: 'machine.yaml', text: machine },
    ...Array.from({ length: jobs }, (_, index) => ({ file: `jobs/${id(index)}.md`, text: jobFile(index) })),
  ];
  const records = readRecords(files, []);
  const today = readDay('2026-05-20');
  if (records.value === undefined || !today.ok) throw new Error('the bench machine cannot be read');
  const book = makeBook(records.value, readContent(readContentFolder()).value, today.value);
  return [
    line(
      `plan of an evening: ${String(jobs)} open jobs`,
      timed(() => eveningOf(book, { minutes: 90, helper: false })),
    ),
    line(
      `list of what to get: ${String(jobs)} open jobs`,
      timed(() => shoppingList([book])),
    ),
  ];
}
