// Millilitres of oil for amounts of petrol: the small ones that a first start takes, and the cans of the road.
import type { Book } from '../../book/book.ts';
import { calculationById } from '../../calc/list.ts';
import type { Figure } from '../../figure/figure.ts';
import { written } from '../../figure/print.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import type { Setting } from '../../records/model.ts';

export interface Mix {
  readonly id: string;
  readonly fuel: Figure<'volume'>;
  readonly oil: Figure;
}

/** What a bottle for a first start holds; never more than half a litre. */
const supplies = ['100 ml', '250 ml', '500 ml'] as const;

/** The setting that names the ratio of petrol to oil. */
export function premixSetting(book: Book): Setting | undefined {
  return book.settings.get('premix');
}

/** What goes into a can at the pump, by the units of the machine. */
const cans = {
  metric: ['1 l', '2 l', '5 l', '10 l'],
  uk: ['1 l', '1 imp gal', '2 imp gal'],
  us: ['1 US qt', '1 US gal', '2 US gal'],
} as const;

/** One line for each supply of a first start; none where the ratio is not known. */
export function oilForFuel(book: Book): readonly Mix[] {
  return mixes(book, supplies, 'content/sheets/before-first-start.md');
}

/** One line for each can, for a two-stroke that is run on a mixture; none where the ratio is not known. */
export function canTable(book: Book): readonly Mix[] {
  const { units, spelling, features } = book.records.machine;
  if (features.stroke !== 'two') return [];
  return mixes(book, cans[units === 'metric' ? 'metric' : spelling], 'content/sheets/torque-pocket-card.md');
}

function mixes(book: Book, amounts: readonly string[], file: string): readonly Mix[] {
  const setting = premixSetting(book);
  const mixing = calculationById('oil-in-fuel');
  if (setting?.value.kind !== 'read' || mixing === undefined) return [];
  const ratio = written(setting.value.written, setting.at, setting.source.title);
  return amounts.flatMap((text): readonly Mix[] => {
    const read = readQuantity(text, 'volume');
    if (!read.ok) return [];
    const fuel = written(read.value, { file, path: [] }, 'the supply that is filled');
    const { oil } = mixing.run({ fuel, ratio }).figures;
    return oil === undefined ? [] : [{ id: text.replaceAll(' ', '-'), fuel, oil }];
  });
}
