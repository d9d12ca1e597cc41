// What is done to the part of a step that comes off: a filling is drained and filled again, every other part removed and refitted.
import type { MakerData, Verb } from '../records/model.ts';

/** Fillings that procedures name before any book gives them: `gearbox-oil`, `brake-fluid`. */
const filling = /^[a-z]+(?:-[a-z]+)*-(?:oil|fluid)$/u;

/** The verb of its tick in the column Off, and of that in the column On. */
export function verbsOfPart(maker: MakerData, part: string): { readonly off: Verb; readonly on: Verb } {
  const isFilling = filling.test(part) || maker.fluids.some(({ id }) => id === part);
  return isFilling ? { off: 'drained', on: 'filled' } : { off: 'removed', on: 'refitted' };
}
