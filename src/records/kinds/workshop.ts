// workshop.yaml: suppliers with their hours, what lies in the drawer, and what was bought once for several machines.
import { entry, may, need, or, wholeFile } from '../shapes/fields.ts';
import { refuse } from '../shapes/desk.ts';
import { day, money } from '../shapes/measured.ts';
import { openHours } from '../shapes/open-hours.ts';
import { list, mapOf, number, text } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import type { SharedPurchase, Workshop } from '../workshop-model.ts';
import { format } from './format.ts';
import { defineRecord } from './record-kind.ts';

const supplier = entry({
  name: need(text, 'their name, as under `from` of a part', { example: 'club spares scheme' }),
  hours: or(openHours, [], 'when they are open', { example: '{Saturday: 9:00 to 12:00}' }),
  leadDays: may(number(0, 1000, 'whole'), 'days from the order to your door, as a rule'),
  note: may(text, 'your own words'),
});

const stock = entry({
  part: need(text, 'what lies there', { example: 'split pin 3.2×32' }),
  number: may(text, 'its number'),
  count: may(number(0, 100_000, 'whole'), 'how many; enough, where it is not written'),
});

const shares: Shape<SharedPurchase['between']> = andThen(
  mapOf(number(1, 1000, 'whole'), 'names of machines'),
  (found, spot, desk) =>
    found.length > 0
      ? found.map(({ key, value }) => ({ machine: key, shares: value }))
      : refuse(desk, spot, 'value-missing', 'It is shared between no machines.', 'Write {name of a machine: 1, …}.'),
);

const shared = entry({
  paid: need(money, 'what was paid, all of it', { example: '18.00 GBP' }),
  date: need(day, 'when', { example: '2024-09-01' }),
  for: need(text, 'what for', { example: 'carburettor cleaner' }),
  group: or(text, 'consumables', 'the group it is summed in'),
  between: need(shares, 'how many shares each machine bears, by its name', {
    example: '{Larkmoor Pipit 175: 2, Wagtail 125: 1}',
  }),
});

export const workshopKind = defineRecord<Workshop>({
  id: 'workshop',
  purpose: 'Suppliers, stock and shared purchases; a file beside the machine folders is shared by all of them.',
  files: 'workshop.yaml',
  matches: (file) => file === 'workshop.yaml' || file === '../workshop.yaml',
  shape: andThen(
    wholeFile({
      splitpin: need(format, 'the version of the format', { example: '1' }),
      suppliers: or(list(supplier), [], 'where parts come from'),
      stock: or(list(stock), [], 'what lies in the drawer and belongs to no machine yet'),
      shared: or(list(shared), [], 'bought once, for several machines'),
    }),
    ({ suppliers, stock: drawer, shared: bought }) => ({ suppliers, stock: drawer, shared: bought }),
  ),
});
