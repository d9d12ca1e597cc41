// What kind of quantity a reading must be: that of the limit or setting of its name.
import type { Dimension } from '../quantity/quantity.ts';
import type { MakerData } from './model.ts';

/** Looks up a limit or setting by its id. */
export function dimensionsOf(maker: MakerData): (item: string) => Dimension | undefined {
  const known = new Map<string, Dimension>();
  for (const setting of maker.settings) {
    const unit = setting.value.kind === 'read' ? setting.value.written.unit : setting.range?.unit;
    if (unit !== undefined) known.set(setting.id, unit.dimension);
  }
  for (const limit of maker.limits) known.set(limit.id, limit.unit.dimension);
  return (item) => known.get(item);
}
