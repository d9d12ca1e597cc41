// Numbers read off the metal, as an intake has them written, against machine.yaml: what it does not have yet, or has otherwise.
import type { Job } from '../../records/model.ts';
import { keptFlat } from '../../records/runs.ts';
import { oneSlip } from './stamped.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Spaces and the size of letters do not count. */
function plain(number: string): string {
  return number.replaceAll(/\s+/gu, '').toUpperCase();
}

/** The numbers of frame and engine as records read them, in words. */
const numbersRead = keptFlat((job: Job) =>
  job.readings
    .filter(({ item }) => item === 'frame number' || item === 'engine number')
    .flatMap(({ item, found }) => found.map(({ value, at }) => ({ item, value, at })))
    .flatMap(({ item, value, at }) =>
      value.kind === 'words' && value.text !== '?' ? [{ item, text: value.text, at }] : [],
    ),
);

/** One query a number, at its last reading that is not what machine.yaml has; a single slip has a query of its own. */
export const numberReadOtherwise: Look = ({ ground }) =>
  ['frame', 'engine'].flatMap((name) => {
    const known = ground.records.machine.numbers.find((one) => one.name === name);
    const stamped = known === undefined || known.stamped.includes('?') ? undefined : known.stamped;
    const last = numbersRead(ground.all).findLast((one) => one.item === `${name} number`);
    if (last === undefined || known?.private === true) return [];
    if (stamped !== undefined && (plain(stamped) === plain(last.text) || oneSlip(stamped, last.text))) return [];
    const has = stamped === undefined ? 'machine.yaml does not have it yet' : `machine.yaml has ${stamped}`;
    const hint =
      stamped === undefined
        ? `write it under “numbers” in machine.yaml: ${name}: {stamped: ${last.text}, known by: …}`
        : 'read the stamp again, character by character; another number means another part, and the papers have to say so';
    return [query('number-read-otherwise', last.at, `${name} number read as ${last.text}; ${has}`, hint)];
  });
