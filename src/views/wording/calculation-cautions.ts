// The cautions of some calculations as blocks: they stand before the figures.
import { cautionsOfCalculations } from '../../book/cautions-of-calculations.ts';
import type { CautionBlock } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { cautionNamed } from './caution.ts';

/** Cautions of the calculations with these ids, each once, in the order of their grades. */
export function calculationCautions(context: ViewContext, ids: readonly string[]): readonly CautionBlock[] {
  return cautionsOfCalculations(context.book.content, ids).flatMap(({ id }) => cautionNamed(context, id) ?? []);
}
