// A reading against standard and limit, with the instrument's uncertainty between them.
import type { Judged } from '../calc/limit-verdict.ts';
import { judge, judgeSetting } from '../calc/limit-verdict.ts';
import type { Dimension, Written, WrittenRange } from '../quantity/quantity.ts';
import { of } from '../quantity/quantity.ts';
import { keptWith } from '../records/kept-with.ts';
import type { Instrument, Limit, Setting, Value } from '../records/model.ts';
import type { Verdict } from './book.ts';
import { expandedUncertainty } from './uncertainty.ts';

/** What a reading is judged by: the maker's limit entry, or the range (or value) of a setting. */
export interface Measure {
  readonly standard?: WrittenRange;
  readonly limit?: WrittenRange;
}

/** A setting's range is both its standard and its limit; a setting with a value alone has only a standard. */
export function measureOf(limit: Limit | undefined, setting: Setting | undefined): Measure | undefined {
  if (limit !== undefined) return limit;
  return setting === undefined ? undefined : measureOfSetting(setting);
}

/** Kept, so that what was judged by it can be seen to be judged alike. */
const measureOfSetting = keptWith(({ range, value }: Setting): Measure | undefined => {
  if (range !== undefined) return { standard: range, limit: range };
  if (value.kind !== 'read') return undefined;
  const { quantity, unit, decimals, text } = value.written;
  return { standard: { low: quantity, high: quantity, unit, decimals, text } };
});

function sameDimension(written: Written, range: WrittenRange | undefined): boolean {
  return range === undefined || range.unit.dimension === written.unit.dimension;
}

/** Within the doubt of its reading from a limit: that of the instrument, or of the last digit where none is named. */
const tooClose = {
  named: 'too close to call with this instrument',
  unnamed: 'too close to call by the digits written',
} as const;

/** Whether another reading, or a better instrument, has to decide. */
export function isTooClose(verdict: Verdict | undefined): boolean {
  return verdict === tooClose.named || verdict === tooClose.unnamed;
}

/** What the sheet says; a value better than new gets no verdict but a query, since the reading itself is in doubt. */
const printed: Readonly<Record<Judged['verdict'], Verdict | undefined>> = {
  'within standard': 'within standard',
  'worn, usable': 'worn, usable',
  'past the limit': 'past the limit',
  'too close to call': tooClose.named,
  'better than new': undefined,
  'no limit known': 'no limit known',
};

/** The verdict on a reading, by the one rule of calc/limit-verdict.ts. None on words and blanks. */
export function verdictOf(
  value: Value | undefined,
  measure: Measure | undefined,
  instrument: Instrument | undefined,
): Verdict | undefined {
  if (value?.kind !== 'read') return undefined;
  const { quantity, unit } = value.written;
  const { standard, limit } = measure ?? {};
  // Most items of a long log are the owner's own, with no figure of the book's to judge them by.
  if (standard === undefined && limit === undefined) return 'no limit known';
  if (!sameDimension(value.written, standard) || !sameDimension(value.written, limit)) return 'no limit known';
  const half = of(
    expandedUncertainty(value.written, instrument) / unit.factor,
    unit.offset === undefined ? unit : { ...unit, offset: 0 },
  );
  const shown = limit?.unit ?? standard?.unit ?? unit;
  const judged =
    limit !== undefined && limit === standard
      ? judgeSetting<Dimension>(quantity, half, limit, shown)
      : judge<Dimension>(quantity, half, standard, limit, shown);
  const said = printed[judged.verdict];
  const verdict = said === tooClose.named && instrument === undefined ? tooClose.unnamed : said;
  // A setting is set to its mark: it has no limit to wear past.
  return limit !== undefined && limit === standard && verdict === 'past the limit' ? 'outside the range' : verdict;
}
