// What follows from the records, after loading: what is off, proofs, hold points and due list; then the whole book; at 100, 1,000 and 10,000 records.
import { fileURLToPath } from 'node:url';
import { dueList } from '../../src/book/due/due-list.ts';
import { layGround } from '../../src/book/ground.ts';
import { holdPoints } from '../../src/book/holds.ts';
import { judgeOf } from '../../src/book/judge.ts';
import { makeBook } from '../../src/book/make.ts';
import { offAndOn } from '../../src/book/off-and-on.ts';
import { workOdometer } from '../../src/book/odometer.ts';
import { readingSeries } from '../../src/book/series.ts';
import { torqueTable } from '../../src/book/torque.ts';
import { waitBeforeOptimising } from '../../src/command/patient-compiler.ts';
import type { Day } from '../../src/quantity/day.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import type { Content } from '../../src/records/content-model.ts';
import type { Records } from '../../src/records/model.ts';
import { bookContent, bookRecords } from './book-machine.ts';
import { median, type Line } from './rows.ts';

const date = readDay('2026-06-01');

function standing(records: Records, content: Content, today: Day): void {
  const ground = layGround(records, content, today);
  const odometer = workOdometer(ground);
  const { off } = offAndOn(ground.jobs, ground.key);
  const series = readingSeries(ground, odometer);
  holdPoints(ground, odometer, judgeOf(series), { off, torque: torqueTable(ground) });
  dueList(ground, odometer, series);
}

/** Processor time in milliseconds: the wall clock also counts whoever else is at work on this computer. */
function timed(work: () => void): number {
  const begun = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(begun);
  return (user + system) / 1000;
}

function line(work: string, measured: number, must: number): Line {
  return { work, against: 'a bound', measured, must, aim: must / 2, better: 'less', unit: 'ms' };
}

/** The first run, cold, at 1,000 records; then the middle of some more at each size, which tells that it is linear. */
export function bookRows(): readonly Line[] {
  if (!date.ok) throw new Error(date.why.message);
  // As the program does before anything else.
  waitBeforeOptimising();
  const [content, today] = [bookContent(), date.value];
  const thousand = bookRecords(1000);
  const cold = timed(() => standing(thousand, content, today));
  const rows = [100, 1000, 10_000].flatMap((count) => {
    const records = count === 1000 ? thousand : bookRecords(count);
    const turns = count > 1000 ? 5 : 15;
    // A copy of the records is new records to whatever keeps results.
    const middle = (work: () => void): number => median(Array.from({ length: turns }, () => timed(work)));
    const most = Math.max(60, (60 * count) / 1000);
    const many = count.toLocaleString('en').replace(',', ' ') + ' records, 400 checks, 200 lines';
    return [
      line(
        'off, proofs, holds, due: ' + many,
        middle(() => standing({ ...records }, content, today)),
        most,
      ),
      line(
        'the whole book: ' + many,
        middle(() => void makeBook({ ...records }, content, today)),
        most,
      ),
    ];
  });
  return [line('off, proofs, holds, due: 1 000 records, first run, cold', cold, 60), ...rows];
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const { work, measured, must } of bookRows()) console.log([work, measured?.toFixed(1), 'ms of', must].join(' '));
