// A part whose price is written again when it comes, and again when it is fitted, is one buy: the later price is the same money.
import type { Job, PartEntry } from '../../records/model.ts';
import type { Namer } from '../names.ts';
import type { CostLine } from './cost-line.ts';
import { sameMoney } from './cost-line.ts';

export interface PricedAgain {
  readonly part: PartEntry;
  readonly job: Job;
  readonly before: Job;
}

/** How far a part is: a later entry of the same buy is further on, or as far. */
const steps: readonly PartEntry['state'][] = ['wanted', 'ordered', 'here', 'fitted', 'returned'];

function further(before: PartEntry, after: PartEntry): boolean {
  return steps.indexOf(after.state) > steps.indexOf(before.state);
}

function sameBuy(before: PartEntry, after: PartEntry): boolean {
  const known = before.number === undefined || after.number === undefined || before.number === after.number;
  const price = before.price !== undefined && after.price !== undefined && sameMoney(before.price, after.price);
  return known && price && further(before, after);
}

interface Kept {
  part: PartEntry;
  readonly job: Job;
  readonly at: number;
}

/**
 * The lines with each buy once, in their order, told by the state it is in last; and what was priced again. An entry goes on
 * from the oldest one before it, in another record, that has the same name, price and number and is less far.
 */
export function eachBuyOnce(
  lines: readonly CostLine[],
  key: Namer,
): { readonly lines: readonly CostLine[]; readonly again: readonly PricedAgain[] } {
  // What is fitted goes no further: then every line is a buy of its own.
  if (!lines.some(({ entry }) => 'part' in entry && entry.state !== 'fitted')) return { lines, again: [] };
  const open = new Map<string, Kept[]>();
  const again: PricedAgain[] = [];
  const kept: CostLine[] = [];
  for (const line of lines) {
    const { job, entry } = line;
    if (job === undefined || !('part' in entry)) {
      kept.push(line);
      continue;
    }
    const name = key(entry.part);
    const before = open.get(name);
    const first = before?.find((one) => one.job !== job && sameBuy(one.part, entry));
    if (first === undefined) {
      const fresh = { part: entry, job, at: kept.length };
      if (before === undefined) open.set(name, [fresh]);
      else before.push(fresh);
      kept.push(line);
      continue;
    }
    again.push({ part: entry, job, before: first.job });
    first.part = entry;
    const was = kept[first.at];
    if (was !== undefined) kept[first.at] = { ...was, entry };
  }
  return { lines: kept, again };
}
