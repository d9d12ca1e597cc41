// Features that nobody has looked at: everything for any of their kinds is printed and held until somebody does.
import { spacedKey } from '../applies.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** One query for all of them; they are looked at in one walk round the machine. */
export const featureNotKnown: Look = ({ ground }) => {
  const { features, file } = ground.records.machine;
  const [first, ...others] = features.notKnown ?? [];
  if (first === undefined) return [];
  const names = [first, ...others].map(spacedKey).join(', ');
  const message = `not known of this machine: ${names}; what is for any kind of it is printed, and its checks are held`;
  return [
    query(
      'feature-not-known',
      { file, path: ['features', spacedKey(first)] },
      message,
      'look, and write it in place of the `?`',
    ),
  ];
};
