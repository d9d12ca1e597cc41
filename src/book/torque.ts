// The torque table: the maker's value first; a computed band only for what the owner marked as cover, bracket or trim; else a blank.
import { coverTorque } from '../calc/cover-torque.ts';
import type { Figure } from '../figure/figure.ts';
import { written } from '../figure/print.ts';
import type { Quantity, WrittenRange } from '../quantity/quantity.ts';
import type { Fastener, Repair, Source } from '../records/model.ts';
import type { TorqueRow } from './book.ts';
import type { Ground } from './ground.ts';
import type { Worked } from './worked-fasteners.ts';
import { workedFasteners } from './worked-fasteners.ts';

/** Title, edition and page as one line. */
export function sourceLine(source: Source): string {
  const page = source.page === undefined ? undefined : `page ${source.page}`;
  return [source.title, source.edition, page].filter((part) => part !== undefined && part !== '').join(', ');
}

function bound(quantity: Quantity<'torque'>, range: WrittenRange<'torque'>, fastener: Fastener): Figure<'torque'> {
  const { unit, decimals, text } = range;
  return written(
    { quantity, unit, decimals, text },
    { ...fastener.at, path: [...fastener.at.path, 'torque'] },
    sourceLine(fastener.source),
  );
}

function makersValue(range: WrittenRange<'torque'>, fastener: Fastener): TorqueRow['value'] {
  const low = range.low ?? range.high;
  if (low === undefined) return undefined;
  const first = bound(low, range, fastener);
  const two = range.low !== undefined && range.high !== undefined && range.low !== range.high;
  return two && range.high !== undefined ? { low: first, high: bound(range.high, range, fastener) } : { low: first };
}

/** A band for a cover, bracket or trim with its thread known and its hole as made; nothing for any other fastener. */
function computed(fastener: Fastener, repaired: boolean): TorqueRow['value'] {
  if (fastener.duty === undefined || fastener.thread === undefined || repaired) return undefined;
  const figure = coverTorque({
    thread: fastener.thread,
    ...(fastener.class === undefined ? {} : { propertyClass: fastener.class }),
    ...(fastener.into === undefined ? {} : { into: fastener.into }),
    ...(fastener.threads === undefined ? {} : { threads: fastener.threads }),
  });
  if (figure === undefined) return undefined;
  const { band, ...point } = figure;
  return band === undefined
    ? { low: point }
    : { low: { ...point, quantity: band.low }, high: { ...point, quantity: band.high } };
}

function noteOf(fastener: Fastener, repair: Repair | undefined, basis: TorqueRow['basis']): string | undefined {
  const corrected = fastener.source.corrected;
  const notes = [
    corrected === undefined ? undefined : `book corrected: was ${corrected.was}, ${corrected.why}`,
    repair === undefined
      ? undefined
      : `hole repaired (${repair.now}): the value was for the hole as made; look at it at the next removal`,
    basis === 'none' ? 'value not known: find it in the maker’s book before it carries anything' : undefined,
    basis === 'computed' ? 'computed band, not the maker’s value' : undefined,
  ].filter((note) => note !== undefined);
  return notes.length === 0 ? undefined : notes.join('; ');
}

function row(fastener: Fastener, worked: Worked, ground: Ground): TorqueRow {
  const key = ground.key(fastener.id);
  const repaired = worked.repaired.get(key);
  const makers = fastener.torque === undefined ? undefined : makersValue(fastener.torque, fastener);
  const value = makers ?? computed(fastener, repaired !== undefined);
  const basis = makers !== undefined ? 'maker' : value === undefined ? 'none' : 'computed';
  const note = noteOf(fastener, repaired?.repair, basis);
  const last = worked.last.get(key);
  const loosened = worked.loosened.get(key);
  const at = { ...fastener.at, path: [...fastener.at.path, 'stages'] };
  return {
    fastener,
    basis,
    ...(value === undefined ? {} : { value }),
    stages: fastener.stages.map((stage, index) =>
      written(stage, { ...at, path: [...at.path, index] }, sourceLine(fastener.source)),
    ),
    ...(repaired === undefined ? {} : { changed: { now: repaired.repair.now, by: repaired.job } }),
    ...(note === undefined ? {} : { note }),
    touched: worked.touched.has(key),
    ...(last === undefined ? {} : { last }),
    ...(loosened === undefined ? {} : { untightened: loosened }),
  };
}

/** One row a fastener, in the maker's order. A fastener without a maker's value keeps its blank. */
export function torqueTable(ground: Ground): readonly TorqueRow[] {
  const worked = workedFasteners(ground);
  return ground.maker.fasteners.map((fastener) => row(fastener, worked, ground));
}
