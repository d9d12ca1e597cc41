// The paper: numbers, sources, parts, money and dates that do not agree.
import { inUnit } from '../../quantity/quantity.ts';
import { daysBetween } from '../../quantity/day-arithmetic.ts';
import { kilometre } from '../../quantity/units.ts';
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import { printQuantity } from '../../figure/print.ts';
import type { Place } from '../../problem/problem.ts';
import type { MoneyEntry } from '../../records/model.ts';
import type { Ground } from '../ground.ts';
import { frameFits } from '../for-this-frame.ts';
import { hasHappened } from '../in-order.ts';
import { hasWords, remembered } from '../names.ts';
import { oneSlip } from './stamped.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** More than this in a day is not ridden on such a machine (common practice). */
const mostKilometresADay = 1500;

/** A distance that nobody rides. */
export const tooFarInADay: Look = ({ odometer }) =>
  odometer.travelled.flatMap((one, index) => {
    const before = odometer.travelled[index - 1];
    if (before?.metres === undefined || one.metres === undefined) return [];
    const days = Math.max(1, daysBetween(before.day, one.day));
    const far = inUnit(one.reading.reads.quantity, kilometre) - inUnit(before.reading.reads.quantity, kilometre);
    const clean = Math.min((one.metres - before.metres) / 1000, far);
    if (clean / days <= mostKilometresADay) return [];
    const { quantity, unit, decimals } = one.reading.reads;
    return [
      query(
        'too-far-in-a-day',
        one.reading.at,
        `${printQuantity(quantity, unit, decimals)} is further than anybody rides since ${before.day}`,
        'look at the clock again',
      ),
    ];
  });

/** Words in which a record may repeat a stamped number: values of checks, and readings kept as words. */
function writtenNumbers(ground: Ground): readonly { readonly word: string; readonly at: Place }[] {
  const values = ground.all.flatMap((job) => job.checks.map((done) => ({ text: done.value ?? '', at: done.at })));
  const numbers = remembered((item) => hasWords(item, 'number'));
  const readings = ground.all.flatMap((job) =>
    job.readings.filter((one) => numbers(one.item)).flatMap((one) => [...one.found, ...one.left]),
  );
  const words = readings.map(({ value, at }) => ({ text: value.kind === 'words' ? value.text : '', at }));
  return [...values, ...words].flatMap(({ text, at }) => text.split(/[\s,;]+/u).map((word) => ({ word, at })));
}

/** A number written in a record that differs from the stamped one by one character or two swapped ones. */
export const numberDiffers: Look = ({ ground }) => {
  const said = writtenNumbers(ground);
  const stamped = ground.records.machine.numbers.filter((number) => !number.stamped.includes('?'));
  return stamped.flatMap((number) =>
    said
      .filter(({ word }) => oneSlip(word, number.stamped) && !stamped.some((other) => other.stamped === word))
      .map(({ word, at }) =>
        query(
          'number-differs',
          at,
          `${number.name} number ${word} here, ${number.stamped} in machine.yaml: one slip apart`,
          'read the stamp again, character by character',
        ),
      ),
  );
};

/** Data for other frame numbers that nothing for this one replaces. */
export const dataForOtherFrames: Look = ({ ground }) => {
  const { maker, machine } = ground.records;
  const kept = new Set(
    [
      ...ground.maker.fasteners,
      ...ground.maker.limits,
      ...ground.maker.settings,
      ...ground.maker.fluids,
      ...ground.maker.services,
    ].map((one) => one.id),
  );
  return [...maker.fasteners, ...maker.limits, ...maker.settings, ...maker.fluids, ...maker.services]
    .filter((one) => frameFits(one.source, machine) === 'out' && !kept.has(one.id))
    .map((one) =>
      query(
        'data-for-other-frames',
        one.at,
        `${one.id}: the book gives it for other frame numbers; left out`,
        'find the value for this frame number',
      ),
    );
};

/** A limit with no page to look it up on: one query a book. */
export const limitWithoutPage: Look = ({ ground }) => {
  const bare = ground.maker.limits.filter((limit) => limit.source.page === undefined);
  const books = new Map<string, (typeof bare)[number][]>();
  for (const limit of bare) books.set(limit.at.file, [...(books.get(limit.at.file) ?? []), limit]);
  return [...books.values()].flatMap((limits) => {
    const [first] = limits;
    if (first === undefined) return [];
    return [
      query(
        'limit-without-page',
        first.at,
        `no page is given for ${limits.map((limit) => limit.id).join(', ')}`,
        'write `page:`, so that it can be looked up again',
      ),
    ];
  });
};

/** A part fitted that was never bought, found or moved. */
export const partFromNowhere: Look = ({ ground }) => {
  const got = new Set<string>();
  return ground.all.filter(hasHappened).flatMap((job) =>
    job.parts.flatMap((part) => {
      const key = ground.key(part.part);
      const named =
        part.from !== undefined ||
        part.price !== undefined ||
        part.movedFrom !== undefined ||
        ['original', 'made', 'repaired'].includes(part.class ?? '');
      const known = named || got.has(key);
      if (known || part.state !== 'fitted') got.add(key);
      if (known || part.state !== 'fitted') return [];
      return [
        query(
          'part-from-nowhere',
          part.at,
          `${part.part} fitted, and no record says where it came from`,
          'write `from:`, `price:` or `moved from:`',
        ),
      ];
    }),
  );
};

/** A service ticked that measures something, with no reading in the record. */
export const serviceWithoutReading: Look = ({ ground, due }) => {
  const lines = new Map(due.map((line) => [line.service.id, line.service]));
  return ground.jobs.flatMap((job) =>
    job.services.flatMap((id) => {
      const line = lines.get(id);
      if (line === undefined) return [];
      const items = [line.wear, ...line.uses]
        .filter((one) => one !== undefined)
        .map(ground.key)
        .filter((key) => ground.limits.has(key) || ground.settings.has(key));
      if (line.action !== 'measure' && line.action !== 'adjust') return [];
      const read = job.readings.map((reading) => ground.key(reading.item));
      const missing =
        items.length > 0 ? !items.some((item) => read.includes(item)) : line.action === 'measure' && read.length === 0;
      return missing
        ? [
            query(
              'service-without-reading',
              { file: job.file, path: ['services'] },
              `${line.item}: ticked, and no reading is with it`,
              'write what was found and left under `readings:`',
            ),
          ]
        : [];
    }),
  );
};

/** Deposits for which no equal amount came back. */
function depositsOut(entries: readonly MoneyEntry[]): readonly MoneyEntry[] {
  const back = new Map<string, number>();
  const name = (one: MoneyEntry): string => `${String(one.amount.minor)} ${one.amount.currency}`;
  for (const one of entries) if (one.kind === 'deposit back') back.set(name(one), (back.get(name(one)) ?? 0) + 1);
  return entries.filter((one) => {
    if (one.kind !== 'deposit') return false;
    const came = back.get(name(one)) ?? 0;
    back.set(name(one), came - 1);
    return came <= 0;
  });
}

/** Money that is still out, or past the owner's own limit. */
export const moneyOut: Look = ({ ground, costs }) => {
  const open = depositsOut(ground.jobs.flatMap((job) => job.money)).map((one) =>
    query(
      'deposit-not-back',
      one.at,
      `deposit of ${formatMoney(one.amount)} for ${one.for} is not back`,
      'send the old part, or write the deposit off',
    ),
  );
  const { limit, total } = costs;
  if (limit === undefined || limit.currency !== total.currency || total.minor <= limit.minor) return open;
  const at = { file: ground.records.machine.file, path: ['spending limit'] };
  return [
    ...open,
    query(
      'spending-limit-passed',
      at,
      `${formatMoney(total)} spent, and the limit you set is ${formatMoney(limit)}`,
      'stop, or set a new limit on purpose',
    ),
  ];
};

/** Dates and states that contradict each other. */
export const datesAndStates: Look = ({ ground }) =>
  ground.all.flatMap((job) => {
    const place = (key: string) => ({ file: job.file, path: [key] });
    const future = job.state === 'done' && job.date.from > ground.today;
    const early = job.signed !== undefined && job.date.whole === undefined && job.signed.date < job.date.to;
    const filled =
      job.state === 'planned' &&
      job.readings.some((one) => [...one.found, ...one.left].some((each) => each.value.kind === 'read'));
    return [
      ...(future
        ? [
            query(
              'done-in-the-future',
              place('date'),
              `${job.title} is done on ${job.date.from}, after today`,
              'look at the date',
            ),
          ]
        : []),
      ...(early
        ? [
            query(
              'signed-before-its-work',
              place('signed'),
              `signed ${job.signed?.date ?? ''}, before its work ended on ${job.date.to}`,
              'a signed sheet is not used again: write the later work in a record of its own',
            ),
          ]
        : []),
      ...(filled
        ? [
            query(
              'planned-but-filled-in',
              place('state'),
              `${job.title} is planned, and has readings; they are not counted`,
              'write `state: under way` or `done`',
            ),
          ]
        : []),
    ];
  });
