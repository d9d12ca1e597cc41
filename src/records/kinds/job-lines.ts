// The smaller lines of a job: parts, findings, checks, repairs, corrections, ride, run log, money, photos.
import type {
  Answer,
  CheckDone,
  CoreDeposit,
  CoveredArea,
  Correction,
  Finding,
  MoneyEntry,
  PartEntry,
  Photo,
  Release,
  Remark,
  Repair,
  Ride,
  RunLogLine,
  TestDone,
} from '../model.ts';
import { entry, group, may, need, or } from '../shapes/fields.ts';
import { placeOf } from '../shapes/desk.ts';
import { day, money, quantity } from '../shapes/measured.ts';
import { anyText, choice, id, list, number, text, yesNo } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { rangeAt, rangeText } from './limits.ts';
import { verbLine } from './verb-key.ts';

const core: Shape<CoreDeposit> = group({
  deposit: need(money, 'what is left with them', { example: '20.00 GBP' }),
  returnBy: may(day, 'the last day they take the old part', { example: '2024-12-15' }),
  returned: may(day, 'the day it went back and the money came'),
});

export const part: Shape<PartEntry> = entry({
  part: need(text, 'what the part is', { example: 'piston +0.50 left' }),
  bookNumber: may(text, 'its number in the book', { example: '175-13101-50' }),
  number: may(text, 'its number as bought'),
  class: may(choice('original', 'new old stock', 'pattern', 'used', 'repaired', 'made'), 'what kind of part it is'),
  count: or(number(1, 9999, 'whole'), 1, 'how many'),
  from: may(text, 'from where'),
  price: may(money, 'the price as paid, for all of them'),
  state: or(choice('wanted', 'ordered', 'here', 'fitted', 'returned'), 'here', 'how far it is'),
  insteadOf: may(text, 'the part it took the place of'),
  originalKept: may(text, 'where the part it took the place of is kept, to go back one day; or no', {
    example: 'tub 2',
  }),
  supersedes: may(text, 'the older number that its number took the place of in the maker’s lists'),
  size: may(text, 'its size, as measured from the old one', { example: '25×40×7 mm' }),
  bring: may(text, 'what is taken along to the shop as a sample', { example: 'the old seal' }),
  alternatives: may(list(text), 'what would do as well', { example: '[the same in Viton]' }),
  onlyIf: may(text, 'bought only when this turns out so; it holds no work up'),
  promised: may(day, 'when an ordered part was promised for'),
  core: may(core, 'money left with the supplier until the old part comes back'),
  movedFrom: may(text, 'the machine it came off'),
  movedTo: may(text, 'the machine it went to'),
  worth: may(money, 'what you set it at when it moved; no money that was paid', { example: '40.00 GBP' }),
  note: may(text, 'your own words'),
});

export const testDone: Shape<TestDone> = entry({
  test: need(id, 'id of a test or sign of the fault tables', { example: 'spark' }),
  saw: need(id, 'what it showed, by its id', { example: 'thin' }),
  note: may(text, 'your own words'),
});

export const finding: Shape<Finding> = entry({
  id: need(id, 'its permanent id', { example: 'seal-hard' }),
  saw: need(text, 'what was seen', { example: 'left crank seal hard as wood' }),
  weight: or(
    choice('stops', 'limits', 'not done', 'note'),
    'note',
    'whether it stops the machine, limits it, or neither',
  ),
  became: or(text, 'open', 'open, or what became of it'),
  until: may(day, 'how long it may wait'),
});

const checkKeys = entry({
  check: need(id, 'id of the check', { example: 'stop-switch-opens' }),
  by: may(text, 'who did it'),
  checkedBy: may(text, 'who looked at it after them'),
  value: may(text, 'what was read'),
});
/** The id alone, or with its keys. */
export const checkDone: Shape<CheckDone> = {
  read: (tree, spot, desk) => checkKeys.read(typeof tree === 'string' ? { check: tree } : tree, spot, desk),
  told: { kind: 'either', of: [{ kind: 'text', written: 'id of the check' }, checkKeys.told] },
};

export const release: Shape<Release> = entry({
  of: need(text, 'id of the hold point or check that is let pass', { example: 'before-road' }),
  by: need(text, 'who lets it pass', { example: 'owner' }),
  why: need(text, 'why', { example: 'pushed to the station, not ridden' }),
  until: may(day, 'the last day it holds', { example: '2024-09-30' }),
});

export const answer: Shape<Answer> = entry({
  query: need(text, 'the print of the query, as the binder prints it beside it', { example: '0y6pwtl' }),
  by: need(text, 'who looked at it', { example: 'owner' }),
  why: need(text, 'why it may stand', { example: 'the blade was right, the book is wrong' }),
});

export const remark: Shape<Remark> = andThen(
  group({
    at: need(text, 'where on the sheet it was written: id of the blank', { example: 'wheel-rear-out/step-3/note' }),
    says: need(text, 'what was written there', { example: 'long spacer scored' }),
    by: may(text, 'whose hand'),
  }),
  ({ at: blank, ...rest }, spot, desk) => ({ ...rest, blank, at: placeOf(desk, spot) }),
);

export const repair: Shape<Repair> = andThen(
  entry({
    of: need(text, 'id of the fastener, limit or setting that is not as the book says any more', {
      example: 'cylinder-head-nut',
    }),
    now: need(text, 'what it is now', { example: 'wire thread insert' }),
    why: may(text, 'why'),
    standard: may(rangeText, 'the standard from now on', { example: '50.50 to 50.52 mm' }),
    limit: may(rangeText, 'the limit from now on', { example: '50.60 mm max' }),
  }),
  ({ standard, limit, ...rest }, spot, desk) => {
    const before = desk.problems.length;
    const dimension = desk.dimensionOf(rest.of);
    const asNew = rangeAt(standard, dimension, spot, 'standard', desk);
    const last = rangeAt(limit, dimension, spot, 'limit', desk);
    if (desk.problems.length > before) return undefined;
    return {
      ...rest,
      ...(asNew === undefined ? {} : { standard: asNew }),
      ...(last === undefined ? {} : { limit: last }),
    };
  },
);

export const correction: Shape<Correction> = entry({
  record: need(text, 'id of the record that is corrected', { example: '2024-06-15-points' }),
  item: need(text, 'which reading or key of it', { example: 'points-gap' }),
  position: may(text, 'which position'),
  was: need(text, 'what it says', { example: '0.50 mm' }),
  is: need(text, 'what is right', { example: '0.35 mm' }),
  why: need(text, 'why', { example: 'read the wrong blade' }),
});

export const ride: Shape<Ride> = group({
  where: may(choice('road', 'private land'), 'on the road when not written'),
  out: may(quantity('distance ridden', '8216 mi'), 'clock going out'),
  in: may(quantity('distance ridden', '8224 mi'), 'clock coming in'),
  fuel: may(quantity('volume', '0.6 l'), 'petrol put in'),
  oil: may(quantity('volume', '30 ml'), 'oil put in'),
  weather: may(text, 'weather'),
  whatHappened: may(text, 'what happened'),
});

export const runLogLine: Shape<RunLogLine> = group({
  minute: need(number(0, 100_000), 'minutes since it fired', { example: '2' }),
  saw: need(text, 'what was seen', { example: 'grey smoke, clearing' }),
});

const payments = ['paid', 'refund', 'deposit', 'deposit back'] as const;
const moneyKeys = entry({
  for: need(text, 'what for', { example: 'the machine' }),
  group: or(text, 'other', 'the group it is summed in', { example: 'buying' }),
});
export const moneyEntry: Shape<MoneyEntry> = andThen(
  verbLine(payments, money, moneyKeys),
  ({ verb, object, rest }) => ({
    kind: verb,
    amount: object,
    ...rest,
  }),
);

const area: Shape<CoveredArea> = group({
  left: need(quantity('share', '60 %'), 'where it begins, from the left edge'),
  top: need(quantity('share', '70 %'), 'where it begins, from the top edge'),
  width: need(quantity('share', '25 %'), 'how wide it is'),
  height: need(quantity('share', '10 %'), 'how high it is'),
});

export const photo: Shape<Photo> = entry({
  file: need(text, 'path of the picture, from the machine folder', { example: 'photos/head-off.png' }),
  caption: or(anyText, '', 'what it shows', { example: 'Head off' }),
  before: or(yesNo, false, 'taken before the work'),
  private: or(yesNo, false, 'kept out of the buyer’s copy'),
  cover: may(list(area), 'parts of the picture that are black in the buyer’s copy', {
    example: '[{left: 60 %, top: 70 %, width: 25 %, height: 10 %}]',
  }),
});

export const signature = group({
  by: need(text, 'who signs', { example: 'owner' }),
  date: need(day, 'when', { example: '2024-09-14' }),
  print: may(text, 'the print of the record, from its page in the binder: a later change shows'),
});
