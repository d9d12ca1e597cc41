// Numbers on the clock and on the frame that cannot be right.
import { inUnit } from '../../quantity/quantity.ts';
import { daysBetween } from '../../quantity/day-arithmetic.ts';
import { kilometre } from '../../quantity/units.ts';
import { printQuantity } from '../../figure/print.ts';
import type { Place } from '../../problem/problem.ts';
import type { Job } from '../../records/model.ts';
import { keptWith } from '../../records/kept-with.ts';
import type { OdometerWork } from '../odometer.ts';
import { keptFlat } from '../../records/runs.ts';
import { hasWords, remembered } from '../names.ts';
import { oneSlip } from './stamped.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** More than this in a day is not ridden on such a machine (common practice). */
const mostKilometresADay = 1500;

/** A distance that nobody rides. */
export const tooFarInADay: Look = ({ odometer }) => tooFar(odometer.travelled);

const tooFar = keptWith((travelled: OdometerWork['travelled']) =>
  travelled.flatMap((one, index) => {
    const before = travelled[index - 1];
    if (before?.metres === undefined || one.metres === undefined) return [];
    const days = Math.max(1, daysBetween(before.day, one.day));
    const far = inUnit(one.reading.reads.quantity, kilometre) - inUnit(before.reading.reads.quantity, kilometre);
    const clean = Math.min((one.metres - before.metres) / 1000, far);
    if (clean / days <= mostKilometresADay) return [];
    const { quantity, unit, decimals } = one.reading.reads;
    return [
      query(
        'too-far-in-a-day',
        one.reading.at,
        `${printQuantity(quantity, unit, decimals)} is further than anybody rides since ${before.day}`,
        'look at the clock again',
      ),
    ];
  }),
);

/** Words in which a record may repeat a stamped number: values of checks, and readings kept as words. */
const wordsOfChecks = keptFlat(({ checks }: Job) =>
  checks.flatMap(({ value, at }) => (value === undefined || value === '' ? [] : wordsIn(value, at))),
);

const ofNumbers = remembered((item) => hasWords(item, 'number'));

const wordsOfReadings = keptFlat(({ readings }: Job) =>
  readings
    .filter((one) => ofNumbers(one.item))
    .flatMap((one) => [...one.found, ...one.left])
    .flatMap(({ value, at }) => wordsIn(value.kind === 'words' ? value.text : '', at)),
);

function wordsIn(text: string, at: Place): readonly { readonly word: string; readonly at: Place }[] {
  return text.split(/[\s,;]+/u).map((word) => ({ word, at }));
}

/** A number written in a record that differs from the stamped one by one character or two swapped ones. */
export const numberDiffers: Look = ({ ground }) => {
  const said = [...wordsOfChecks(ground.all), ...wordsOfReadings(ground.all)];
  const stamped = ground.records.machine.numbers.filter((number) => !number.stamped.includes('?'));
  return stamped.flatMap((number) =>
    said
      .filter(({ word }) => oneSlip(word, number.stamped) && !stamped.some((other) => other.stamped === word))
      .map(({ word, at }) =>
        query(
          'number-differs',
          at,
          `${number.name} number ${word} here, ${number.stamped} in machine.yaml: one slip apart`,
          'read the stamp again, character by character',
        ),
      ),
  );
};
