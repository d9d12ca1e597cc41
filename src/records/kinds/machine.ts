// machine.yaml: what the machine is.
import type { Machine } from '../model.ts';
import { refuse } from '../shapes/desk.ts';
import { group, may, need, or } from '../shapes/fields.ts';
import { money, quantity } from '../shapes/measured.ts';
import { choice, list, mapOf, number, text } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { clock } from './clock.ts';
import { features } from './features.ts';
import { format } from './format.ts';
import { geometry } from './geometry.ts';
import { numbers } from './numbers.ts';
import { defineRecord } from './record-kind.ts';

const place = group({
  altitude: may(quantity('length', '85 m'), 'how high it lives'),
  site: may(text, 'address under which the site is kept, if any', { example: 'https://binder.example' }),
});

/** Three capitals that name a currency. */
const currency: Shape<string> = andThen(text, (words) => words.toUpperCase());

const rates = andThen(mapOf(number(0.000001, 1_000_000), 'currencies'), (found) =>
  Object.fromEntries(found.map(({ key, value }) => [key, value])),
);

/** `25 %`, at most as much again twice over. */
const share: Shape<number> = andThen(quantity('share', '25 %'), ({ quantity: part, text: written }, spot, desk) =>
  part >= 0 && part <= 2
    ? part
    : refuse(desk, spot, 'number-out-of-range', `“${written}” cannot stand here.`, 'Write 0 % to 200 %.'),
);

export const machineKind = defineRecord<Omit<Machine, 'file'>>({
  id: 'machine',
  purpose: 'What the machine is: numbers, features, geometry, clock, and how its binder is printed.',
  files: 'machine.yaml',
  matches: (file) => file === 'machine.yaml',
  shape: andThen(
    group({
      splitpin: need(format, 'the version of the format', { example: '1' }),
      name: need(text, 'what you call it', { example: 'Larkmoor Pipit 175' }),
      make: need(text, 'the make', { example: 'Larkmoor' }),
      model: need(text, 'the model', { example: 'Pipit 175' }),
      year: may(text, 'year of making', { example: '1969' }),
      firstUse: may(text, 'date of first use', { example: '1969-05' }),
      numbers: or(numbers, [], 'numbers stamped on it', { example: '{frame: {stamped: LP175-04417}}' }),
      features: need(features, 'what it has; decides which checks and sheets apply'),
      geometry: or(geometry, { gears: [] }, 'bore, stroke, gearing, tyres'),
      clock: or(clock, [], 'instrument periods of the odometer, oldest first'),
      place: or(place, {}, 'where it lives', { example: '{altitude: 85 m}' }),
      units: or(choice('metric', 'imperial'), 'metric', 'which unit is printed first where the maker gives none'),
      spelling: or(choice('uk', 'us'), 'uk', 'spelling of our own words'),
      paper: or(choice('a4', 'letter', 'a5', 'half-letter'), 'a4', 'paper of the printed sheets'),
      sides: or(choice('one', 'both'), 'one', 'whether a leaf is printed on one side or on both'),
      currency: need(currency, 'the currency that sums are in', { example: 'GBP' }),
      rates: or(rates, {}, 'worth of one of another currency in yours, as stated by you', { example: '{USD: 0.79}' }),
      roadRules: may(text, 'whose road rules apply', { example: 'uk' }),
      spendingLimit: may(money, 'what you will spend', { example: '900.00 GBP' }),
      allowance: may(share, 'on top of what is still to come, for what is found when it is open', { example: '25 %' }),
      privateWords: may(
        list(text),
        'words kept out of the buyer’s copy wherever they stand: names, addresses, the insurer, where it is kept',
        { example: '[Mill Row 12, policy 77-1204]' },
      ),
      hourRate: may(money, 'what an hour of your own is worth to you; without it hours are not valued'),
    }),
    ({ splitpin, place: { altitude, site }, ...rest }) => ({
      format: splitpin,
      ...rest,
      ...(altitude === undefined ? {} : { altitude }),
      ...(site === undefined ? {} : { site }),
    }),
  ),
});
