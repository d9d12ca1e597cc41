// A short fingerprint of all records: two prints with the same one were made from the same words.
import type { Day } from '../quantity/day.ts';
import type { Records } from '../records/model.ts';
import { byText, hasHappened, lastSureDay } from './in-order.ts';

/** Places and units are left out: the written text says both. */
const silent: ReadonlySet<string> = new Set(['at', 'unit', 'quantity']);

/** One step over a text; 32 bits, mixed at the end of each text. Not for secrets, only to tell sheets apart. */
function overText(state: number, text: string): number {
  let now = state;
  for (let index = 0; index < text.length; index += 1) now = Math.imul(now ^ text.charCodeAt(index), 0x85ebca6b);
  return Math.imul(now ^ (now >>> 15) ^ text.length, 0xc2b2ae35);
}

/** A key is the same few words in every record: gone over once, 0 for what is left out. */
const ofKeys = new Map<string, number>();

function ofKey(key: string): number {
  const before = ofKeys.get(key);
  if (before !== undefined) return before;
  const made = silent.has(key) ? 0 : overText(key.length, key) | 1;
  ofKeys.set(key, made);
  return made;
}

/** Keys in their order; this is walked once for every value of every record. */
function overObject(state: number, value: Readonly<Record<string, unknown>>): number {
  const keys = Object.keys(value);
  let now = Math.imul(state ^ keys.length, 0x27d4eb2f);
  for (const key of keys) {
    const said = ofKey(key);
    const inner = value[key];
    if (inner !== undefined && said !== 0) now = over(Math.imul(now ^ said, 0x85ebca6b), inner);
  }
  return now;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

function over(state: number, value: unknown): number {
  if (typeof value === 'string') return overText(state, value);
  if (!isObject(value)) return overText(state, String(value));
  if (!Array.isArray(value)) return overObject(state, value);
  let now = Math.imul(state ^ value.length, 0x165667b1);
  for (let index = 0; index < value.length; index += 1) now = over(now, value[index]);
  return now;
}

function print(value: unknown): string {
  const state = over(0x9e3779b9, value);
  return (Math.imul(state ^ (state >>> 16), 0x7feb352d) >>> 0).toString(36).padStart(7, '0');
}

/**
 * Seven letters and digits over the machine, its maker's data, instruments, story and all records; the order of files does not
 * matter. Records are the most by far, and say theirs by themselves.
 */
export function recordsVersion(records: Records): string {
  const { machine, maker, instruments, workshop, wiring, story, jobs, unread, own } = records;
  const parts = [
    print(machine),
    print(maker),
    print(instruments),
    print(story ?? ''),
    ...(workshop === undefined ? [] : [`workshop.yaml${print(workshop)}`]),
    ...(wiring === undefined ? [] : [`wiring.yaml${print(wiring)}`]),
    ...jobs.map((job) => job.file + job.version),
    ...unread.map((one) => one.file),
    ...(own ?? []).map((one) => one.file + print(one.text)),
  ];
  return print(parts.toSorted(byText));
}

/** The newest date in the records: of what has happened, or of a clock when nothing has. */
export function recordsDate(records: Records, today: Day): Day {
  const jobs = records.jobs.filter(hasHappened).map(lastSureDay);
  const clocks = records.machine.clock.flatMap((period) => [
    period.from.day,
    ...(period.to === undefined ? [] : [period.to.day]),
  ]);
  const days = jobs.length === 0 ? clocks : jobs;
  return (
    days.reduce<Day | undefined>((newest, day) => (newest === undefined || day > newest ? day : newest), undefined) ??
    today
  );
}
