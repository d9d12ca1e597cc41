// Services and oil ticked without what they are ticked for.
import { hasWords, remembered } from '../names.ts';
import { workDone } from '../work-by-verb.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** A service ticked that measures something, with no reading in the record. */
export const serviceWithoutReading: Look = ({ ground, due }) => {
  const lines = new Map(due.map((line) => [line.service.id, line.service]));
  return ground.jobs.flatMap((job) =>
    job.services.flatMap((id) => {
      const line = lines.get(id);
      if (line === undefined) return [];
      const items = [line.wear, ...line.uses]
        .filter((one) => one !== undefined)
        .map(ground.key)
        .filter((key) => ground.limits.has(key) || ground.settings.has(key));
      if (line.action !== 'measure' && line.action !== 'adjust') return [];
      const read = job.readings.map((reading) => ground.key(reading.item));
      const missing =
        items.length > 0 ? !items.some((item) => read.includes(item)) : line.action === 'measure' && read.length === 0;
      return missing
        ? [
            query(
              'service-without-reading',
              { file: job.file, path: ['services'] },
              `${line.item}: ticked, and no reading is with it`,
              'write what was found and left under `readings:`',
            ),
          ]
        : [];
    }),
  );
};

/** Oil without its quantity or grade. */
export const oilWithoutQuantity: Look = ({ ground }) => {
  const isOil = remembered((thing) => hasWords(thing, 'oil'));
  return workDone(ground, 'filled')
    .filter(({ entry }) => (entry.quantity === undefined || entry.grade === undefined) && isOil(entry.thing))
    .map(({ entry }) => {
      const missing = entry.quantity === undefined ? 'how much' : 'which grade';
      return query(
        'oil-without-quantity-or-grade',
        entry.at,
        `${entry.thing} filled, and ${missing} is not written`,
        'write `quantity:` and `grade:`',
      );
    });
};
