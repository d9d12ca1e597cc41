// Small records for tests: every builder fills in what a test does not speak of.
import type { Place } from '../../src/problem/problem.ts';
import { readDay, readDaySpan } from '../../src/quantity/day-arithmetic.ts';
import type { Day } from '../../src/quantity/day.ts';
import { readMoney } from '../../src/quantity/money-arithmetic.ts';
import type { Dimension, Read } from '../../src/quantity/quantity.ts';
import { readAnyQuantity, readQuantity } from '../../src/quantity/read-quantity.ts';
import { readRange } from '../../src/quantity/read-range.ts';
import { printOf } from '../../src/records/signed-print.ts';
import { makeBook } from '../../src/book/make.ts';
import type { Book } from '../../src/book/book.ts';
import type { Check, Content, HoldPoint, Procedure } from '../../src/records/content-model.ts';
import type {
  Fastener,
  Fluid,
  Instrument,
  InstrumentPeriod,
  Interval,
  Job,
  Limit,
  Machine,
  MakerData,
  PartEntry,
  Reading,
  ReadingValue,
  Records,
  ServiceLine,
  Setting,
  Value,
  Verb,
  WorkEntry,
} from '../../src/records/model.ts';

export const nowhere: Place = { file: 'test.md', path: [] };

function sure<T>(read: Read<T>): T {
  if (!read.ok) throw new Error(read.why.message);
  return read.value;
}

export const day = (text: string): Day => sure(readDay(text));
export const money = (text: string) => sure(readMoney(text));
export const quantity = <D extends Dimension>(text: string, dimension: D) => sure(readQuantity(text, dimension));
export const range = <D extends Dimension>(text: string, dimension: D) => sure(readRange(text, dimension));
export const ridden = (text: string) => quantity(text, 'distance ridden');
export const source = { title: 'Workshop book', edition: '1968', page: '9' };

export function value(text: string): Value {
  if (text === '?') return { kind: 'unknown' };
  const read = readAnyQuantity(text);
  return read.ok ? { kind: 'read', written: read.value } : { kind: 'words', text };
}

/** `{left: '6.8 bar'}` or one value without a position. */
function values(given: string | Readonly<Record<string, string>> | undefined): readonly ReadingValue[] {
  if (given === undefined) return [];
  const pairs = typeof given === 'string' ? [['', given] as const] : Object.entries(given);
  return pairs.map(([position, text]) => ({ position, value: value(text), at: nowhere }));
}

type Given = string | Readonly<Record<string, string>>;

export function reading(
  item: string,
  given: { found?: Given; left?: Given; condition?: readonly string[]; instrument?: string },
): Reading {
  return {
    item,
    found: values(given.found),
    left: values(given.left),
    condition: given.condition ?? [],
    ...(given.instrument === undefined ? {} : { instrument: given.instrument }),
    at: nowhere,
  };
}

export function work(verb: Verb, thing: string, more: Partial<WorkEntry> = {}): WorkEntry {
  return { verb, thing, fasteners: [], at: nowhere, ...more };
}

export function part(name: string, more: Partial<PartEntry> = {}): PartEntry {
  return { part: name, count: 1, state: 'fitted', at: nowhere, ...more };
}

let count = 0;

/** A done job of the day; its id is the day and a running number unless given. */
export function job(date: string, more: Partial<Job> = {}): Job {
  count += 1;
  const id = more.id ?? `${date}-${String(count).padStart(5, '0')}`;
  return {
    version: printOf(JSON.stringify([date, more])),
    id,
    file: `jobs/${id}.md`,
    title: id,
    date: sure(readDaySpan(date)),
    kind: 'repair',
    state: 'done',
    hands: ['owner'],
    procedures: [],
    work: [],
    readings: [],
    parts: [],
    findings: [],
    checks: [],
    services: [],
    repairs: [],
    corrections: [],
    runLog: [],
    heatCycles: 0,
    money: [],
    photos: [],
    stateLeft: [],
    body: '',
    bodyLine: 1,
    ...more,
  };
}

export const ticked = (check: string, more: { value?: string; by?: string; checkedBy?: string } = {}) => ({
  check,
  at: nowhere,
  ...more,
});

export function period(
  id: string,
  from: readonly [string, string?],
  more: { to?: readonly [string, string?]; state?: InstrumentPeriod['state'] } = {},
): InstrumentPeriod {
  const end = ([at, reads]: readonly [string, string?]) => ({
    day: day(at),
    ...(reads === undefined ? {} : { reads: ridden(reads) }),
  });
  const unit = from[1] === undefined ? ridden('0 mi').unit : ridden(from[1]).unit;
  const to = more.to === undefined ? {} : { to: end(more.to) };
  return {
    id,
    unit,
    digits: 5,
    from: end(from),
    ...to,
    state: more.state ?? 'working',
    at: { file: 'machine.yaml', path: ['clock'] },
  };
}

export function machine(more: Partial<Machine> = {}): Machine {
  return {
    file: 'machine.yaml',
    format: 1,
    name: 'Pipit',
    make: 'Larkmoor',
    model: 'Pipit 175',
    numbers: [{ name: 'frame', stamped: 'LP175-04417', knownBy: 'headstock', private: false }],
    features: {
      stroke: 'two',
      cylinders: 2,
      cylinderNames: ['left', 'right'],
      lubrication: 'pump',
      ignition: 'battery and coil',
      trigger: 'points',
      battery: true,
      lamps: true,
      frontBrake: 'drum',
      rearBrake: 'drum',
      finalDrive: 'chain',
      wheels: 'spoked',
    },
    geometry: { gears: [] },
    clock: [period('first-clock', ['1969-05-01', '0 mi'])],
    units: 'metric',
    spelling: 'uk',
    paper: 'a4',
    sides: 'one',
    currency: 'GBP',
    rates: { EUR: 0.85 },
    ...more,
  };
}

export function fastener(id: string, more: Partial<Fastener> & { torqueText?: string } = {}): Fastener {
  const { torqueText, ...rest } = more;
  const torque = torqueText === undefined ? {} : { torque: range(torqueText, 'torque') };
  return {
    id,
    name: id,
    lengths: [],
    stages: [],
    singleUse: false,
    disturbs: [],
    source,
    at: { file: 'maker/book.yaml', path: [id] },
    ...torque,
    ...rest,
  };
}

export function limit(
  id: string,
  standard: string | undefined,
  bound: string | undefined,
  more: Partial<Limit> & { dimension?: Dimension } = {},
): Limit {
  const { dimension = 'length', ...rest } = more;
  const texts = {
    ...(standard === undefined ? {} : { standard: range(standard, dimension) }),
    ...(bound === undefined ? {} : { limit: range(bound, dimension) }),
  };
  const unit = texts.standard?.unit ?? texts.limit?.unit ?? quantity('1 mm', 'length').unit;
  return { id, name: id, positions: [], unit, ...texts, condition: [], disturbs: [], source, at: nowhere, ...rest };
}

export function setting(id: string, text: string, more: Partial<Setting> & { rangeText?: string } = {}): Setting {
  const { rangeText, ...rest } = more;
  const bounds = rangeText === undefined ? {} : { range: range(rangeText, 'length') };
  return { id, name: id, value: value(text), condition: [], disturbs: [], source, at: nowhere, ...bounds, ...rest };
}

export function interval(text: string): Interval {
  const parts = text.split(' or ').map((one) => one.trim());
  let made: Interval = { text };
  for (const one of parts) {
    const months = /^(\d+) months?$/.exec(one);
    if (months !== null) made = { ...made, months: Number(months[1]) };
    else if (one.endsWith(' h')) made = { ...made, running: quantity(one, 'running time') };
    else made = { ...made, distance: ridden(one) };
  }
  return made;
}

export function service(id: string, more: Partial<ServiceLine> = {}): ServiceLine {
  return {
    id,
    item: id,
    action: 'inspect',
    onlyIfNoDistanceService: false,
    includes: [],
    severe: {},
    grace: 0,
    afterStorage: false,
    unknown: 'inspect',
    uses: [],
    basis: 'maker',
    source,
    at: { file: 'maker/book.yaml', path: ['services', id] },
    ...more,
  };
}

export function instrument(id: string, more: { accuracy?: string; resolution?: string } = {}): Instrument {
  const accuracy = more.accuracy === undefined ? {} : { accuracy: { absolute: quantity(more.accuracy, 'length') } };
  const resolution = more.resolution === undefined ? {} : { resolution: quantity(more.resolution, 'length') };
  return { id, name: id, ...accuracy, ...resolution, at: nowhere };
}

export const fluid = (id: string): Fluid => ({ id, name: id, source, at: nowhere });

export function maker(more: Partial<MakerData> = {}): MakerData {
  return { fasteners: [], limits: [], fluids: [], settings: [], services: [], sources: [source], ...more };
}

export function check(id: string, more: Partial<Check> = {}): Check {
  return { id, text: id, why: 'because', proof: 'done', undoneBy: [], applies: {}, at: nowhere, ...more };
}

export function hold(id: string, order: number, checks: readonly Check[], more: Partial<HoldPoint> = {}): HoldPoint {
  return { id, title: id, order, checks, applies: {}, at: nowhere, ...more };
}

export function procedure(id: string, more: Partial<Procedure> = {}): Procedure {
  return {
    id,
    title: id,
    applies: {},
    before: [],
    cautions: [],
    tools: [],
    steps: [],
    assembly: [],
    measure: [],
    disturbs: [],
    body: '',
    at: nowhere,
    ...more,
  };
}

export function content(more: Partial<Content> & { procedureList?: readonly Procedure[] } = {}): Content {
  const { procedureList = [], ...rest } = more;
  return {
    cautions: new Map(),
    procedures: new Map(procedureList.map((one) => [one.id, one])),
    holdPoints: [],
    schedules: [],
    sheets: [],
    words: [],
    pages: new Map(),
    ...rest,
  };
}

export function records(jobs: readonly Job[], more: Partial<Records> = {}): Records {
  return { machine: machine(), maker: maker(), instruments: [], jobs, unread: [], ...more };
}

/** The book of a few records on a day. */
export function book(
  jobs: readonly Job[],
  today: string,
  more: { records?: Partial<Records>; content?: Content } = {},
): Book {
  return makeBook(records(jobs, more.records ?? {}), more.content ?? content(), day(today));
}
