// A feature in words: as it is, or that nobody has looked yet.
import type { Features } from '../../records/model.ts';
import { count } from './count.ts';

type Named = Exclude<keyof Features, 'volts' | 'cylinderNames' | 'notKnown'>;

/** `chain`, `yes`, `none`, `2`; `not known` while the record has `?`. */
export function featureText(features: Features, name: Named): string {
  if (features.notKnown?.includes(name) === true) return 'not known';
  const value = features[name];
  if (value === undefined) return 'not known';
  if (typeof value === 'boolean') return value ? 'yes' : 'none';
  return typeof value === 'number' ? count(value) : value;
}
