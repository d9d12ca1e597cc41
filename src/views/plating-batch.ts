// A batch for plating or blasting: fasteners of parts that are off, or will come off, by thread and length, counted out, counted back, sorted to their holes.
import type { Fastener } from '../records/model.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, joined, paragraphs, row } from './wording/blocks.ts';
import { count, times } from './wording/count.ts';
import { threadText } from './wording/fastener.ts';
import { grouped } from './wording/grouped.ts';
import { stepsOf } from './wording/steps.ts';
import { writtenText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

interface Lot {
  readonly fastener: Fastener;
  readonly size: string;
  /** How many by the records or the maker's data; absent where nobody knows. */
  readonly many?: number;
  readonly from: string;
}

export const platingBatch = defineView({
  id: 'plating-batch',
  purpose: 'Fasteners of parts that are off, counted out and back by thread and length, each sorted to its holes.',
  needs: 'machine',
  options: [],
  blocks: (context) => [rules(context), table(context), ...rest(context)],
});

function rules({ say }: ViewContext): Block {
  return paragraphs(
    say(
      'Counted twice out, twice back. What carries wheels, brakes, bars or engine stays out of an acid or plating bath at home: new, or as it is.',
    ),
  );
}

/** One lot for each length of a fastener. */
function lotsOf(fastener: Fastener, many: number | undefined, from: string): readonly Lot[] {
  const thread = threadText(fastener.thread ?? '');
  const sized = (length: string): string => [thread, length].filter((text) => text !== '').join(' × ');
  if (fastener.lengths.length > 0)
    return fastener.lengths.map(({ length, count: each }) => ({
      fastener,
      size: sized(writtenText(length)),
      many: each,
      from,
    }));
  const size = sized(fastener.length === undefined ? '' : writtenText(fastener.length));
  return [{ fastener, size, from, ...(many === undefined ? {} : { many }) }];
}

function offNow({ book }: ViewContext): readonly Lot[] {
  return book.off.open
    .filter(({ state }) => state === 'off')
    .flatMap(({ entry }) =>
      entry.fasteners.flatMap(({ id, count: many }) => {
        const known = book.fasteners.get(id);
        return known === undefined ? [] : lotsOf(known, many, entry.bag ?? '');
      }),
    );
}

function comingOff(context: ViewContext): readonly Lot[] {
  const { book } = context;
  return book.plans.flatMap((plan) =>
    stepsOf({ ...context, job: plan.job, plan }, 'steps').flatMap(({ step, bag }) =>
      step.fasteners.flatMap((id) => {
        const known = book.fasteners.get(id);
        return known === undefined ? [] : lotsOf(known, known.count, bag === undefined ? '' : count(bag));
      }),
    ),
  );
}

/** A nut that is loosened in one step and comes off in another is one lot, in the bag where it ends. */
function onceEach(lots: readonly Lot[]): readonly Lot[] {
  const found = new Map<string, Lot>();
  for (const lot of lots) {
    const key = `${lot.fastener.id}/${lot.size}`;
    const before = found.get(key);
    if (before === undefined || before.from === '') found.set(key, lot);
  }
  return [...found.values()];
}

/** What it holds, where its own name does not say it: `Cylinder head nuts` do. The part is named as our procedures name it. */
function heldBy(say: ViewContext['say'], { name, of }: Fastener): string | undefined {
  if (of === undefined) return undefined;
  const isNamed = [of, say(of)].some((part) => name.toLowerCase().includes(part.toLowerCase()));
  return isNamed ? undefined : say(of);
}

function lotRow(context: ViewContext, lot: Lot, size: string): Row {
  const { say } = context;
  const { fastener, many, from } = lot;
  const id = `batch/${fastener.id}/${lot.size}`;
  return row(
    size === '' ? '' : [{ kind: 'strong', text: size }],
    joined([fastener.name, heldBy(say, fastener), say(fastener.duty ?? 'no acid at home')]),
    joined([fastener.class, from === '' ? undefined : `${say('bag')} ${from}`]),
    { text: many === undefined ? '' : times(many), big: true },
    { box: 'write', id: `${id}/out` },
    { box: 'write', id: `${id}/back` },
    { box: 'tick', id: `${id}/sorted` },
  );
}

function table(context: ViewContext): Block {
  const { say } = context;
  const lots = onceEach([...offNow(context), ...comingOff(context)]).filter(
    ({ fastener }) => !/plug/i.test(fastener.name),
  );
  const bySize = [...grouped(lots, (lot) => lot.size)].toSorted(([one], [other]) => (one < other ? -1 : 1));
  return {
    type: 'table',
    columns: [
      column(say('Thread × length'), 4),
      column(say('Fastener, what it holds'), 6),
      column(say('Class, bag'), 2.5),
      column(say('Should be'), 2, 'right'),
      column(say('Out'), 2.8),
      column(say('Back'), 2.8),
      column(say('In its holes'), 1, 'centre'),
    ],
    rows: bySize.flatMap(([size, those]) =>
      those.map((lot, index) => lotRow(context, lot, index > 0 ? '' : size === '' ? say('thread not known') : size)),
    ),
    empty: say('No fastener of a part that is off is recorded: write them below.'),
    use: 'work',
  };
}

function rest({ say }: ViewContext): readonly Block[] {
  return [
    {
      type: 'grid',
      caption: say('Besides'),
      columns: [
        column(say('Thread × length'), 3),
        column(say('From which holes'), 5),
        column(say('Out'), 1.6),
        column(say('Back'), 1.6),
        column(say('To whom, promised for'), 4),
      ],
      rows: 3,
    },
  ];
}
