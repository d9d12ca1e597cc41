// Millilitres of oil for the small amounts of petrol that a first start takes.
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

/** One line for each supply; none where the ratio is not known. */
export function oilForFuel(book: Book): readonly Mix[] {
  const setting = premixSetting(book);
  const mixing = calculationById('oil-in-fuel');
  if (setting?.value.kind !== 'read' || mixing === undefined) return [];
  const ratio = written(setting.value.written, setting.at, setting.source.title);
  return supplies.flatMap((text): readonly Mix[] => {
    const read = readQuantity(text, 'volume');
    if (!read.ok) return [];
    const fuel = written(
      read.value,
      { file: 'content/sheets/before-first-start.md', path: [] },
      'the supply that is filled',
    );
    const { oil } = mixing.run({ fuel, ratio }).figures;
    return oil === undefined ? [] : [{ id: text.replace(' ', '-'), fuel, oil }];
  });
}
