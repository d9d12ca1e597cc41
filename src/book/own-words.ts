// A name as a record may write it: an id that is known, else the owner's own words, which are not joined by hyphens.
import type { MakerData } from '../records/model.ts';

/** `rear-torque-arm-nut` stays where the maker's data knows it, and is `rear torque arm nut` where not: a record takes a name with hyphens for an id. */
export function nameInRecord(maker: MakerData, name: string): string {
  if (!/^[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)+$/u.test(name)) return name;
  const lists = [maker.fasteners, maker.limits, maker.settings, maker.fluids, maker.services];
  return lists.some((list) => list.some(({ id }) => id === name)) ? name : name.replaceAll('-', ' ');
}

/** `engine-oil drained` with the name that the maker's data gives the id it begins with; the owner's own words as they are. */
export function withNameOfId({ fasteners, limits, settings, fluids }: MakerData, told: string): string {
  const [id = ''] = told.split(' ');
  const named = [...fasteners, ...limits, ...settings, ...fluids].find((one) => one.id === id);
  return named === undefined ? told : `${named.name}${told.slice(id.length)}`;
}
