// A written torque against its neighbours, against what any bolt of its mark carries, and against the book when it was tightened.
import { calculationById } from '../../calc/list.ts';
import { likelySlip, unitSlips } from '../../calc/torque-slip.ts';
import type { Figure } from '../../figure/figure.ts';
import { printFigure, printQuantity, written } from '../../figure/print.ts';
import type { Problem } from '../../problem/problem.ts';
import { inUnit, of } from '../../quantity/quantity.ts';
import { newtonMetre } from '../../quantity/units.ts';
import type { TorqueRow } from '../book.ts';
import { workDone } from '../work-by-verb.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Fewer neighbours say nothing: two joints of one thread may well differ. */
const enoughNeighbours = 2;
/** Slips that no spread between joints can be taken for: 9.81, 10, 12. */
const gross = 5;
/** A slip of any factor from the book’s own value comes this near. */
const near = 1.04;
/** What is taken where a fastener bears no mark: nothing stronger is on a machine. */
const strongest = '12.9';

function newtonMetres(figure: Figure<'torque'>): number {
  return inUnit<'torque'>(figure.quantity, newtonMetre);
}

/** The makers' torques of each thread, sorted: a machine may have thousands of fasteners of one thread. */
function byThread(all: readonly TorqueRow[]): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  for (const { basis, fastener, value } of all) {
    if (basis !== 'maker' || fastener.thread === undefined || value === undefined) continue;
    const list = found.get(fastener.thread);
    if (list === undefined) found.set(fastener.thread, [newtonMetres(value.low)]);
    else list.push(newtonMetres(value.low));
  }
  for (const list of found.values()) list.sort((a, b) => a - b);
  return found;
}

/** Index of the first that is not smaller. */
function indexIn(sorted: readonly number[], value: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const half = (low + high) >> 1;
    if ((sorted[half] ?? 0) < value) low = half + 1;
    else high = half;
  }
  return low;
}

/** The middle of all but one of them. */
function middleOfOthers(sorted: readonly number[], own: number): number {
  const skip = indexIn(sorted, own);
  const other = (index: number): number => sorted[index < skip ? index : index + 1] ?? 0;
  const many = sorted.length - 1;
  return (other(Math.floor((many - 1) / 2)) + other(Math.floor(many / 2))) / 2;
}

function asNewtonMetres(value: number): string {
  return printQuantity(of(value, newtonMetre), newtonMetre, 1);
}

/** A maker’s torque ten or twelve times off all others of its thread. */
function amongNeighbours(
  row: TorqueRow,
  value: Figure<'torque'>,
  neighbours: ReadonlyMap<string, readonly number[]>,
): readonly Problem[] {
  const { thread, name } = row.fastener;
  const all = thread === undefined ? undefined : neighbours.get(thread);
  if (thread === undefined || all === undefined || all.length - 1 < enoughNeighbours) return [];
  const expected = middleOfOthers(all, newtonMetres(value));
  const slip = likelySlip(newtonMetres(value), expected);
  if (slip === undefined || Math.max(slip.factor, 1 / slip.factor) < gross) return [];
  const message = `${name}: ${printFigure(value)} does not fit its neighbours, other fasteners ${thread} have about ${asNewtonMetres(expected)}: ${slip.says}? ${asNewtonMetres(newtonMetres(value) * slip.factor)}`;
  return [
    query(
      'torque-unit-slip',
      value.origin.kind === 'written' ? value.origin.at : row.fastener.at,
      message,
      'look at the unit in the book',
    ),
  ];
}

/** The torque at which a bolt of this mark reaches its proof load, dry (nut factor 0.2). */
function mostCarried(row: TorqueRow): number | undefined {
  const { thread, class: mark } = row.fastener;
  if (thread === undefined) return undefined;
  const load = calculationById('bolt-strength')?.run({ thread, class: mark ?? strongest }).figures['proof load'];
  const diameter = calculationById('thread-geometry')?.run({ thread }).figures['diameter'];
  return load === undefined || diameter === undefined ? undefined : 0.2 * load.quantity * diameter.quantity;
}

function aboveStrength(row: TorqueRow, value: Figure<'torque'>): readonly Problem[] {
  const limit = mostCarried(row);
  if (limit === undefined || newtonMetres(value) <= 1.5 * limit) return [];
  const mark = row.fastener.class === undefined ? 'any bolt of this thread' : `a bolt of class ${row.fastener.class}`;
  const message = `${row.fastener.name}: ${printFigure(value)} is far more than ${mark} carries, about ${asNewtonMetres(limit)} at its proof load`;
  return [
    query(
      'torque-above-strength',
      value.origin.kind === 'written' ? value.origin.at : row.fastener.at,
      message,
      'look at the unit in the book, and at the thread',
    ),
  ];
}

/** Makers’ torques that do not fit. */
export const torqueDoesNotFit: Look = ({ torque }) => {
  const neighbours = byThread(torque);
  return torque.flatMap((row) => {
    const value = row.value?.low;
    if (row.basis !== 'maker' || value === undefined) return [];
    const slipped = amongNeighbours(row, value, neighbours);
    return slipped.length > 0 ? slipped : aboveStrength(row, value);
  });
};

/** A fastener tightened to a value that is the book’s in another unit. */
export const tightenedInOtherUnit: Look = ({ ground, torque }) => {
  const byKey = new Map(torque.map((row) => [ground.key(row.fastener.id), row]));
  return workDone(ground, 'tightened').flatMap(({ entry }) => {
    const row = entry.torque === undefined ? undefined : byKey.get(ground.key(entry.thing));
    const value = row?.value;
    if (entry.torque === undefined || row === undefined || value === undefined) return [];
    const aimed = inUnit<'torque'>(entry.torque.quantity, newtonMetre);
    const low = newtonMetres(value.low);
    const slip = slipFromBook(aimed, low, value.high === undefined ? low : newtonMetres(value.high));
    if (slip === undefined) return [];
    const to = written(entry.torque, entry.at);
    const message = `${row.fastener.name} tightened to ${printFigure(to)}, the book has ${printFigure(value.low)}: ${slip}?`;
    const hint = 'look at the unit; if it was pulled so, slacken it and tighten it again';
    return [query('torque-unit-slip', entry.at, message, hint)];
  });
};

/** The slip that turns the value into the book’s own, where it is not that already. */
function slipFromBook(aimed: number, low: number, high: number): string | undefined {
  if (aimed >= low / near && aimed <= high * near) return undefined;
  // 9.81 and 10 both come near: the nearer one is said.
  const off = ({ factor }: (typeof unitSlips)[number]): number => Math.abs(Math.log((aimed * factor) / low));
  const slips = unitSlips.filter(({ factor }) => aimed * factor >= low / near && aimed * factor <= high * near);
  return slips.toSorted((a, b) => off(a) - off(b))[0]?.says;
}

/** The value is the book’s own in another unit; that is asked about by `torque-unit-slip`. */
export function isSlipOfBook(to: Figure<'torque'>, { low, high }: NonNullable<TorqueRow['value']>): boolean {
  const bottom = newtonMetres(low);
  return slipFromBook(newtonMetres(to), bottom, high === undefined ? bottom : newtonMetres(high)) !== undefined;
}
