// Tags and bag labels: one to lie in the bag and one to hang on it, with job, contents and a square code; blank ones for what comes next.
import type { BagLine, OpenLine } from '../book/book.ts';
import { tagCode } from '../records/square-codes.ts';
import type { CardsBlock, Text } from '../sheet/sheet.ts';
import { count, countOf } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { fastenerNamed } from './wording/fastener.ts';
import { sentence } from './wording/blocks.ts';
import { workThing } from './wording/work.ts';
import { stepsOf } from './wording/steps.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** Two rows of them stand on a sheet of either paper. */
const tag = { width: 60, height: 110 } as const;

type Card = CardsBlock['cards'][number];

export const tags = defineView({
  id: 'tags',
  purpose: 'Bag labels, in and out, with contents, job and square code, and tags for large parts.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly CardsBlock[] => [
    { type: 'cards', size: { width: tag.width, height: tag.height }, hole: true, cards: cards(context) },
  ],
});

function cards(context: ViewContext): readonly Card[] {
  const { book } = context;
  const bags = book.off.bags.filter((bag) => !bag.emptied);
  const loose = book.off.open.filter((line) => line.entry.bag === undefined && line.state === 'off');
  const planned = book.plans.flatMap((plan) => plannedBags({ ...context, job: plan.job, plan }));
  const full = [...bags.flatMap((bag) => bagCards(context, bag)), ...loose.map((line) => partTag(context, line))];
  return [...full, ...planned, ...blankTags(context)];
}

function foot({ book }: ViewContext, day: string): string {
  return [book.records.machine.name, day].filter((text) => text !== '').join(', ');
}

/** Label in and label out are alike: ink on the outside goes with the first cleaner. */
function bothLabels({ say }: ViewContext, title: string, card: Omit<Card, 'title'>): readonly Card[] {
  return ['in', 'out'].map((side) => ({ ...card, title: `${title}, ${say(side)}` }));
}

function bagCards(context: ViewContext, bag: BagLine): readonly Card[] {
  const { book, say } = context;
  const [first] = bag.contents;
  const contents = bag.contents.flatMap(({ entry }): readonly Text[] => [
    [{ kind: 'strong', text: sentence(workThing(book, entry)) }],
    ...entry.fasteners.map(({ id, count: many }): Text => `${count(many)} × ${fastenerNamed(book, id).name}`),
    ...(entry.wayRound === undefined ? [] : [`${say('Way round')}: ${entry.wayRound}`]),
    ...(entry.note === undefined ? [] : [entry.note]),
  ]);
  const job = first === undefined ? [] : [`${say('Job')}: ${first.job.title}`];
  return bothLabels(context, `${say('Bag')} ${bag.bag}`, {
    lines: [...contents, ...job],
    code: tagCode(book.records.machine, { bag: bag.bag, ...(first === undefined ? {} : { job: first.job.id }) }),
    foot: foot(context, first === undefined ? '' : dayText(first.since)),
  });
}

function partTag(context: ViewContext, line: OpenLine): Card {
  const { book, say } = context;
  const { entry, job } = line;
  return {
    title: sentence(workThing(book, entry)),
    lines: [
      `${say('Off since')} ${dayText(line.since)}`,
      ...(entry.where === undefined ? [] : [`${say('Where')}: ${entry.where}`]),
      ...(entry.wayRound === undefined ? [] : [`${say('Way round')}: ${entry.wayRound}`]),
      ...(entry.note === undefined ? [] : [entry.note]),
      `${say('Job')}: ${job.title}`,
    ],
    code: tagCode(book.records.machine, { job: job.id }),
    foot: foot(context, ''),
  };
}

/** Labels of the bags that a planned job is going to fill, with what should go in; the count is written at the bag. */
function plannedBags(context: ViewContext): readonly Card[] {
  const { book, say, job } = context;
  return stepsOf(context, 'steps').flatMap((one): readonly Card[] => {
    if (one.bag === undefined) return [];
    const parts = one.step.off.map((part): Text => [{ kind: 'strong', text: sentence(say(part)) }]);
    const fasteners = one.step.fasteners.map((id): Text => {
      const { name, size } = fastenerNamed(book, id);
      return size === '' ? name : `${size} ${name}`;
    });
    return bothLabels(context, `${say('Bag')} ${count(one.bag)}`, {
      lines: [...parts, ...fasteners, `${say('Step')} ${count(one.number)}: ${job?.title ?? ''}`, say('Counted in:')],
      code: tagCode(book.records.machine, {
        bag: count(one.bag),
        step: count(one.number),
        ...(job === undefined ? {} : { job: job.id }),
      }),
      foot: foot(context, say('date:')),
    });
  });
}

/** A line left to be written on. */
const blank = '\u00a0';

/** A pair of blank labels and a blank tag, and as many again where they take no further page. */
function blankTags(context: ViewContext): readonly Card[] {
  const { book, say } = context;
  const many = book.off.bags.length;
  const used = many === 0 ? '' : ` (${countOf(many, say('bag is numbered so far'), say('bags are numbered so far'))})`;
  const writing = [
    say('Contents:'),
    blank,
    blank,
    say('Fasteners, size, count:'),
    blank,
    blank,
    say('Job, step:'),
    blank,
  ];
  const label = { lines: [`${say('No.')}${used}`, blank, ...writing], foot: foot(context, say('date:')) };
  const part = {
    title: say('Part'),
    lines: [
      blank,
      say('Came from, which side:'),
      blank,
      blank,
      say('Way round:'),
      blank,
      say('Fasteners:'),
      blank,
      say('Job:'),
    ],
    foot: label.foot,
  };
  const spare = [...bothLabels(context, say('Bag'), label), part].map((one) => ({ ...one, spare: true }));
  return [...bothLabels(context, say('Bag'), label), part, ...spare];
}
