// A pair of wheels written the wrong way round: teeth stand as driving, then driven, and both drives gear down.
import { formatDecimal } from '../../quantity/decimal.ts';
import type { ToothPair } from '../../records/model.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Primary and final drive turn the faster into the slower; a pair that does not is asked about. */
export const gearingUpsideDown: Look = ({ ground }) => {
  const { geometry, file } = ground.records.machine;
  const pairs: readonly (readonly [string, ToothPair | undefined])[] = [
    ['primary', geometry.primary],
    ['final', geometry.final],
  ];
  return pairs.flatMap(([name, pair]) => {
    if (pair === undefined || pair.driven >= pair.driving) return [];
    const [driving, driven] = [formatDecimal(pair.driving, 0), formatDecimal(pair.driven, 0)];
    const message = `${name} ${driving}:${driven}: the driving wheel has more teeth than the driven one`;
    const hint = `write driving, then driven; probably ${driven}:${driving}`;
    return [query('gearing-upside-down', { file, path: ['geometry', name] }, message, hint)];
  });
};
