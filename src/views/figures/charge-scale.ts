// Volts of the rested battery of this machine for a few states of charge, to stand beside the blank.
import type { Book } from '../../book/book.ts';
import { calculationOn } from '../../book/taken/on-machine.ts';
import type { Figure } from '../../figure/figure.ts';
import { written } from '../../figure/print.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';

const charges = ['100 %', '75 %', '50 %', '25 %'] as const;

export interface ChargePoint {
  readonly charge: string;
  readonly volts: Figure;
}

/** A point for each charge; none where the machine has no battery or its volts are not known. */
export function chargeScale(book: Book): readonly ChargePoint[] {
  if (!book.records.machine.features.battery) return [];
  return charges.flatMap((text) => {
    const read = readQuantity(text, 'share');
    if (!read.ok) return [];
    const charge = written(read.value, { file: 'shared/charge-by-volts.csv', path: [] });
    const volts = calculationOn(book, 'rested-volts', { charge })?.worked.figures['volts'];
    return volts === undefined ? [] : [{ charge: text, volts: { ...volts, decimals: 2 } }];
  });
}
