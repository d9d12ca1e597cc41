// The label on the tank cap against how the engine is oiled: the wrong fuel kills it.
import type { CheckDone } from '../../records/model.ts';
import type { Found, Look } from './query.ts';
import { query } from './query.ts';

const labels: ReadonlySet<string> = new Set(['cap-label-right', 'tank-cap-says-so']);
const saysMixed = /\b\d{2}\s*:\s*1\b|\b(?:premix|petroil|mixture|mixed)\b/iu;
const saysPlain = /\b(?:only|plain|pump)\b/iu;

/** The label as it was read last, with its words. */
function lastLabel({ ground }: Found): CheckDone | undefined {
  return ground.jobs
    .flatMap((job) => job.checks.filter((one) => labels.has(one.check) && one.value !== undefined))
    .at(-1);
}

/** The pump is proved when its hold point is clear; until then premix in the tank is right, and the label says so. */
function pumpProved({ holds }: Found): boolean {
  return holds.holds.some((hold) => hold.point.id === 'before-plain-petrol' && hold.clear);
}

/** Petrol only where the oil comes with the fuel; premix where the pump is proved and oils it a second time. */
export const labelAgainstOiling: Look = (found) => {
  const { lubrication, notKnown } = found.ground.records.machine.features;
  const label = lastLabel(found);
  const words = label?.value ?? '';
  if (label === undefined || notKnown?.includes('lubrication') === true) return [];
  const plain = lubrication === 'premix' && saysPlain.test(words) && !saysMixed.test(words);
  const mixed = lubrication === 'pump' && saysMixed.test(words) && pumpProved(found);
  if (!plain && !mixed) return [];
  const oiled = plain ? 'this engine is oiled by its fuel' : 'the pump is proved: premix oils it twice';
  return [
    query(
      'label-against-oiling',
      label.at,
      `the label says “${words}”, and ${oiled}`,
      'change the label before the next fill',
    ),
  ];
};
