// What a job uses up without anybody having written it down: split pins, tab washers, gaskets, fluids by the quantity in the book.
import type { Fastener, Fluid, Job } from '../../records/model.ts';
import type { Procedure, UsedUp } from '../../records/content-model.ts';
import { appliesTo } from '../applies.ts';
import type { Book, OpenLine } from '../book.ts';
import { hasWords, makeNamer, plainName } from '../names.ts';
import type { PartLine } from './part-lines.ts';

/** Something used up, with what is known of it. */
export interface Implied {
  readonly what: string;
  /** One name for one thing: equal things are one line. */
  readonly key: string;
  readonly count?: number;
  readonly fastener?: Fastener;
  readonly fluid?: Fluid;
  /** A fluid of which the book says neither kind nor quantity. */
  readonly notInBook?: true;
  /** The job it is for; absent: for what is off now. */
  readonly job?: Job;
}

/** What is never used twice, by the words of `locking`; common practice of the trade. */
const alwaysNew = [
  'split pin',
  'cotter pin',
  'tab washer',
  'lock tab',
  'copper washer',
  'circlip',
  'fibre washer',
  'fiber washer',
] as const;

function ofFastener(fastener: Fastener, count: number | undefined): readonly Implied[] {
  const many = count ?? fastener.count;
  const counted = many === undefined ? {} : { count: many };
  const lock = alwaysNew.find((one) => hasWords(fastener.locking ?? '', one));
  const pin = lock === undefined ? [] : [{ what: lock, key: `${lock} ${fastener.id}`, fastener, ...counted }];
  if (!fastener.singleUse) return pin;
  return [...pin, { what: fastener.name, key: `new ${fastener.id}`, fastener, ...counted }];
}

function ofFluid(fluid: Fluid): Implied {
  return { what: fluid.name, key: `fluid ${fluid.id}`, fluid };
}

function fluidNamed(book: Book, word: string): Fluid | undefined {
  const key = makeNamer(book.records.maker);
  return book.records.maker.fluids.find(({ id }) => key(id) === key(word));
}

function isFluid(thing: string): boolean {
  return ['oil', 'fluid', 'coolant'].some((word) => hasWords(thing, word)) && !hasWords(thing, 'tank');
}

/** What putting one open line back uses up. */
export function impliedByOpenLine(book: Book, { entry, state }: OpenLine): readonly Implied[] {
  if (state === 'empty') {
    const fluid = fluidNamed(book, entry.thing);
    if (fluid !== undefined) return [ofFluid(fluid)];
    // The book has no line for it; a tank or a bowl that is empty is not bought.
    return isFluid(entry.thing) ? [{ what: entry.thing, key: `fluid ${plainName(entry.thing)}`, notInBook: true }] : [];
  }
  const own = entry.fasteners.flatMap(({ id, count }) => {
    const fastener = book.fasteners.get(id);
    return fastener === undefined ? [] : ofFastener(fastener, count);
  });
  const itself = book.fasteners.get(entry.thing);
  return itself === undefined ? own : [...own, ...ofFastener(itself, entry.count)];
}

function ofUse(book: Book, use: UsedUp): readonly Implied[] {
  const { features } = book.records.machine;
  if (!appliesTo(use.applies, features)) return [];
  if (use.fluid !== undefined) {
    const fluid = fluidNamed(book, use.fluid);
    return fluid === undefined
      ? [{ what: use.fluid.replaceAll('-', ' '), key: `fluid ${use.fluid}` }]
      : [ofFluid(fluid)];
  }
  const what = use.part ?? '';
  const count = use.count === undefined ? undefined : use.count * (use.perCylinder ? features.cylinders : 1);
  return what === '' ? [] : [{ what, key: plainName(what), ...(count === undefined ? {} : { count }) }];
}

function ofProcedure(book: Book, procedure: Procedure): readonly Implied[] {
  const ids = new Set([...procedure.steps, ...procedure.assembly].flatMap((step) => step.fasteners));
  const fasteners = [...ids].flatMap((id) => book.fasteners.get(id) ?? []);
  return [
    ...(procedure.uses ?? []).flatMap((use) => ofUse(book, use)),
    ...fasteners.flatMap((one) => ofFastener(one, undefined)),
  ];
}

/** What a planned job fills in, and what the services it names use. */
function ofFilling(book: Book, job: Job): readonly Implied[] {
  const filled = job.work.filter(({ verb }) => verb === 'filled').map(({ thing }) => thing);
  const services = book.due.filter(({ service }) => job.services.includes(service.id));
  const used = services.flatMap(({ service }) => service.uses);
  return [...filled, ...used].flatMap((word) => fluidNamed(book, word) ?? []).map(ofFluid);
}

/** Everything that the open jobs and what is off use up, each thing of a job once. */
export function impliedNeeds(book: Book): readonly Implied[] {
  const ofPlans = book.plans.flatMap(({ job, procedures }) => {
    const all = [...procedures.flatMap((one) => ofProcedure(book, one)), ...ofFilling(book, job)];
    return [...new Map(all.map((one) => [one.key, { ...one, job }])).values()];
  });
  const planned = new Set(ofPlans.map(({ key }) => key));
  const open = book.off.open.flatMap((line) => impliedByOpenLine(book, line)).filter(({ key }) => !planned.has(key));
  return [...ofPlans, ...new Map(open.map((one) => [one.key, one])).values()];
}

/** Is it on the list or in the drawer already, under its own name. */
export function isCovered({ what, job }: Implied, lines: readonly PartLine[], stock: readonly string[]): boolean {
  // A comma after a plural hides it from matching.
  const named = (text: string): boolean => hasWords(text.replaceAll(',', ' '), what);
  return (
    stock.some(named) ||
    lines.some(({ part, job: of }) => named(part.part) && (job === undefined || of === job || part.state === 'here'))
  );
}
