// A fluid that was changed, by the work of a record: then the line that renews it is done, ticked or not.
import type { Fluid, ServiceLine, WorkEntry } from '../../records/model.ts';
import type { Namer } from '../names.ts';

/** So much of the book's quantity in one filling is a change and no topping up; judgement. */
const wholeFilling = 2 / 3;

/** Ids of the service lines that an entry of work has done; entries are to be given in the order of the records. */
export type ChangedBy = (entry: WorkEntry) => readonly string[];

const nothing: readonly string[] = [];

/**
 * A fluid was changed when it was filled after it had been drained, in that record or before; when one filling was nearly the whole
 * quantity of the book; or when it was `replaced`. Filled without a word of the old one, or of how much, it may have been topped up.
 */
export function changedFluids(
  lines: readonly ServiceLine[],
  fluids: ReadonlyMap<string, Fluid>,
  key: Namer,
): ChangedBy {
  const renews = new Map<string, string[]>();
  for (const line of lines) {
    if (line.action !== 'renew') continue;
    for (const fluid of line.uses.map(key)) renews.set(fluid, [...(renews.get(fluid) ?? []), line.id]);
  }
  const empty = new Set<string>();
  return ({ verb, thing, quantity }) => {
    if (verb !== 'drained' && verb !== 'filled' && verb !== 'replaced') return nothing;
    const fluid = key(thing);
    const done = renews.get(fluid);
    if (done === undefined) return nothing;
    if (verb === 'drained') {
      empty.add(fluid);
      return nothing;
    }
    const wasEmpty = empty.delete(fluid);
    return wasEmpty || verb === 'replaced' || isWhole(quantity, fluids.get(fluid)) ? done : nothing;
  };
}

function isWhole(quantity: WorkEntry['quantity'], fluid: Fluid | undefined): boolean {
  const whole = fluid?.quantity;
  if (quantity === undefined || whole === undefined) return false;
  return quantity.unit.dimension === whole.unit.dimension && quantity.quantity >= wholeFilling * whole.quantity;
}
