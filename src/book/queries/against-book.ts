// What was tightened and taken off against what the book says of the same fastener: stages, torque, how many there are.
import type { Figure } from '../../figure/figure.ts';
import { printFigure, written } from '../../figure/print.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Fastener, Job, WorkEntry } from '../../records/model.ts';
import type { TorqueRow } from '../book.ts';
import { workDone } from '../work-by-verb.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';
import { isSlipOfBook } from './torque.ts';

/** Rounding from one unit to another, and what a wrench is good for, stay within this. */
const near = 1.04;

/** Inside the book’s value, or near it. */
function meetsBook(aimed: number, { low, high = low }: NonNullable<TorqueRow['value']>): boolean {
  return aimed >= low.quantity / near && aimed <= high.quantity * near;
}

function bookText({ low, high }: NonNullable<TorqueRow['value']>): string {
  return high === undefined ? printFigure(low) : `${printFigure(low)} to ${printFigure(high)}`;
}

/** A maker’s entry whose last stage is another torque than its torque. */
export const stagesAgainstTorque: Look = ({ torque }) =>
  torque.flatMap(({ fastener, basis, stages, value }) => {
    const last = stages.at(-1);
    if (basis !== 'maker' || last === undefined || value === undefined || meetsBook(last.quantity, value)) return [];
    const at = { ...fastener.at, path: [...fastener.at.path, 'stages', stages.length - 1] };
    const message = `${fastener.name}: the last stage is ${printFigure(last)}, and the torque is ${bookText(value)}`;
    return [query('stages-against-torque', at, message, 'look both up in the book; the last stage is the torque')];
  });

/** A stage on the way, with a later entry of the same record that goes on. */
function isOnTheWay(aimed: number, row: TorqueRow, job: Job, entry: WorkEntry): boolean {
  const later = job.work.slice(job.work.indexOf(entry) + 1);
  const isStage = row.stages.some((stage) => Math.abs(Math.log(aimed / stage.quantity)) < Math.log(near));
  return isStage && later.some((one) => one.verb === 'tightened' && one.thing === entry.thing);
}

/** Tightened to something else than the book’s torque, where no unit was mistaken; a repaired hole has its own value. */
export const torqueAgainstBook: Look = ({ ground, torque }) => {
  const byKey = new Map(torque.map((row) => [ground.key(row.fastener.id), row]));
  return workDone(ground, 'tightened').flatMap(({ job, entry }) => {
    const row = entry.torque === undefined ? undefined : byKey.get(ground.key(entry.thing));
    if (entry.torque === undefined || row?.value === undefined) return [];
    const { value, basis, changed, fastener } = row;
    if (basis !== 'maker' || changed !== undefined || meetsBook(entry.torque.quantity, value)) return [];
    const to: Figure<'torque'> = written(entry.torque, entry.at);
    if (isSlipOfBook(to, value) || isOnTheWay(to.quantity, row, job, entry)) return [];
    const message = `${fastener.name} tightened to ${printFigure(to)}, the book has ${bookText(value)}`;
    const hint = 'look at the book; if it was pulled so, slacken it and tighten it again, or write why';
    return [query('torque-against-book', entry.at, message, hint)];
  });
};

function bookCount({ count, lengths }: Fastener): number | undefined {
  if (count !== undefined) return count;
  return lengths.length === 0 ? undefined : lengths.reduce((sum, one) => sum + one.count, 0);
}

/** More of them in one entry than the book has. */
export const moreThanBook: Look = ({ ground, torque }) => {
  const counted = torque.filter(({ fastener }) => bookCount(fastener) !== undefined);
  if (counted.length === 0) return [];
  const byKey = new Map(counted.map(({ fastener }) => [ground.key(fastener.id), fastener]));
  return ground.jobs.flatMap((job) =>
    job.work.flatMap((entry) =>
      entry.fasteners.flatMap(({ id, count }) => {
        const fastener = byKey.get(ground.key(id));
        const most = fastener === undefined ? undefined : bookCount(fastener);
        if (fastener === undefined || most === undefined || count <= most) return [];
        const message = `${entry.thing} ${entry.verb} with ${formatDecimal(count, 0)} × ${fastener.name}, the book has ${formatDecimal(most, 0)}`;
        return [query('more-fasteners-than-book', entry.at, message, 'count them, and look at the book')];
      }),
    ),
  );
};
