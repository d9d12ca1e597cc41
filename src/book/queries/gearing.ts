// Teeth written the wrong way round: driving, then driven; both drives gear down, and each gear is faster than the one before it.
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

/** A gear that turns the wheel no faster than the one before it: the first of them, for a list turned round is one slip. */
export const gearsOutOfOrder: Look = ({ ground }) => {
  const { geometry, file } = ground.records.machine;
  const { gears } = geometry;
  const slower = gears.findIndex((gear, index) => {
    const before = gears[index - 1];
    return before !== undefined && gear.driven * before.driving >= before.driven * gear.driving;
  });
  const [before, gear] = [gears[slower - 1], gears[slower]];
  if (before === undefined || gear === undefined) return [];
  const [lower, higher] = [formatDecimal(slower, 0), formatDecimal(slower + 1, 0)];
  const message = `gear ${higher} (${teeth(gear)}) is no faster than gear ${lower} (${teeth(before)}): first gear stands first, each as driving:driven`;
  return [
    query(
      'gears-out-of-order',
      { file, path: ['geometry', 'gears', slower] },
      message,
      'count the teeth again, or write them from first to top',
    ),
  ];
};

function teeth({ driving, driven }: ToothPair): string {
  return `${formatDecimal(driving, 0)}:${formatDecimal(driven, 0)}`;
}
