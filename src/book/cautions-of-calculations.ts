// What can hurt where a calculation's values are read or its result is used: its cautions, each once, the gravest first.
import { calculationById } from '../calc/list.ts';
import type { Caution, Content } from '../records/content-model.ts';

const order: readonly Caution['grade'][] = ['WARNING', 'CAUTION', 'NOTE'];

/** The cautions that calculations name by their ids; those the content lacks are left out (a test names them). */
export function cautionsOfCalculations({ cautions }: Content, ids: readonly string[]): readonly Caution[] {
  const named = new Set(ids.flatMap((id) => calculationById(id)?.cautions ?? []));
  const found = [...named].flatMap((id) => cautions.get(id) ?? []);
  return found.toSorted((one, other) => order.indexOf(one.grade) - order.indexOf(other.grade));
}
