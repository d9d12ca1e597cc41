// A short fingerprint of all records: two prints with the same one were made from the same words.
import type { Day } from '../quantity/day.ts';
import type { Job, Records } from '../records/model.ts';
import { byText, hasHappened, lastSureDay } from './in-order.ts';

/** Two 32-bit lanes with different multipliers; not for secrets, only to tell sheets apart. */
interface Lanes {
  a: number;
  b: number;
}

/** Places and units are left out: the written text says both. */
const silent: ReadonlySet<string> = new Set(['at', 'unit', 'quantity']);

function eatText(lanes: Lanes, text: string): void {
  let { a, b } = lanes;
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    a = Math.imul(a ^ code, 0x85ebca6b);
    b = Math.imul(b ^ code, 0xc2b2ae35);
  }
  lanes.a = Math.imul(a ^ (a >>> 15), 0x2c1b3c6d);
  lanes.b = Math.imul(b ^ (b >>> 13), 0x297a2d39);
}

function eatEntry(lanes: Lanes, key: string, value: unknown): void {
  if (silent.has(key) || value === undefined) return;
  eatText(lanes, key);
  eat(lanes, value);
}

function eat(lanes: Lanes, value: unknown): void {
  if (typeof value === 'string') return eatText(lanes, value);
  if (Array.isArray(value)) {
    eatText(lanes, `[${value.length}`);
    for (const one of value) eat(lanes, one);
    return;
  }
  if (typeof value !== 'object' || value === null) return eatText(lanes, String(value));
  for (const [key, inner] of Object.entries(value)) eatEntry(lanes, key, inner);
}

function print(value: unknown): string {
  const lanes: Lanes = { a: 0x9e3779b9, b: 0x85ebca77 };
  eat(lanes, value);
  return (lanes.a >>> 0).toString(36).padStart(7, '0') + (lanes.b >>> 0).toString(36).padStart(7, '0');
}

/** Records are never changed once read, so a record's print is kept for as long as the record is. */
const known = new WeakMap<Job, string>();

function ofJob(job: Job): string {
  const before = known.get(job);
  if (before !== undefined) return before;
  const made = print(job);
  known.set(job, made);
  return made;
}

/** Eight letters and digits over the machine, its maker's data, instruments, story and all records; the order of files does not matter. */
export function recordsVersion(records: Records): string {
  const { machine, maker, instruments, story, jobs, unread } = records;
  const parts = [
    print(machine),
    print(maker),
    print(instruments),
    print(story ?? ''),
    ...jobs.map((job) => job.file + ofJob(job)),
    ...unread.map((one) => one.file),
  ];
  return print(parts.toSorted(byText)).slice(0, 8);
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
