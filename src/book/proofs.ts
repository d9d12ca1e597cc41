// Which checks stand: a proof is good until later work touches what it depends on.
import type { Check } from '../records/content-model.ts';
import type { CheckDone, Job, Reading, ReadingValue } from '../records/model.ts';
import type { CheckState, SeriesPoint } from './book.ts';
import { touching, wiringOf, type Wiring } from './check-wiring.ts';
import type { Touch } from './disturbance.ts';
import { happensAfterChecks, makeReach, touchByKind, touchBySetting, touchByWork } from './disturbance.ts';
import type { Ground } from './ground.ts';
import { remembered } from './names.ts';

export interface Proof {
  readonly job: Job;
  readonly done?: CheckDone;
  readonly value?: string;
  /** Why the proof does not count: a value past its limit, a position not read. */
  readonly but?: string;
}

/** Where a check stands at one moment. */
export interface Standing {
  readonly proof?: Proof;
  readonly undone?: { readonly job: Job; readonly what: string };
}

/** The checks with what undoes them, asked for at any moment while the records are walked. */
export interface Board {
  readonly standing: (check: string) => Standing;
}

/** Called when a record's own checks are ticked and its ride or start is about to happen. */
export type AtRecord = (job: Job, board: Board) => void;

/** Verdict of the reading of a record, item and position, corrections applied. */
export type Judge = (item: string, job: Job, position: string) => SeriesPoint | undefined;

/** Where one check stands while the records are walked; every tick and every piece of work comes to it directly. */
interface Cell {
  proof: Proof | undefined;
  undone: Standing['undone'] | undefined;
}

/** From what undoes to the cells of the checks undone. */
function undoneBy({ undoes }: Wiring, cells: ReadonlyMap<string, Cell>): ReadonlyMap<string, readonly Cell[]> {
  return new Map([...undoes].map(([key, ids]) => [key, ids.flatMap((id) => cells.get(id) ?? [])]));
}

/** The cells that any of some keys undoes; the same list of keys comes again with every entry of one thing. */
function cellsOf(undoes: ReadonlyMap<string, readonly Cell[]>): (keys: readonly string[]) => readonly Cell[] {
  const known = new Map<readonly string[], readonly Cell[]>();
  return (keys) => {
    const before = known.get(keys);
    if (before !== undefined) return before;
    const made = keys.flatMap((key) => undoes.get(key) ?? []);
    known.set(keys, made);
    return made;
  };
}

function textOf(value: ReadingValue): string {
  if (value.value.kind === 'unknown') return '?';
  return value.value.kind === 'words' ? value.value.text : value.value.written.text;
}

/** Verdicts that let a reading prove its check; without a limit the person judges the value. */
const good: ReadonlySet<string> = new Set([
  'within standard',
  'worn, usable',
  'no limit known',
  'limit is for another condition',
]);

/** Why these values prove nothing, if so. */
function flaw(
  reading: Reading,
  values: readonly ReadingValue[],
  job: Job,
  ground: Ground,
  judge: Judge,
): string | undefined {
  const item = ground.key(reading.item);
  const wanted = ground.limits.get(item)?.positions ?? [];
  const missing = wanted.filter(
    (position) => !values.some((one) => one.position === position && one.value.kind === 'read'),
  );
  if (missing.length > 0) return `not read: ${missing.join(', ')}`;
  for (const one of values) {
    const point = judge(item, job, one.position);
    const verdict = point?.value.kind === 'read' ? (point.verdict ?? 'better than new, not believed') : undefined;
    if (verdict !== undefined && !good.has(verdict)) return `${textOf(one)}: ${verdict}`;
  }
  return undefined;
}

function proofByReading(
  reading: Reading,
  values: readonly ReadingValue[],
  job: Job,
  ground: Ground,
  judge: Judge,
): Proof | undefined {
  const read = values.filter((one) => one.value.kind === 'read');
  if (read.length === 0) return undefined;
  const value = read.map((one) => (one.position === '' ? textOf(one) : `${one.position} ${textOf(one)}`)).join(', ');
  const but = flaw(reading, values, job, ground, judge);
  return { job, value, ...(but === undefined ? {} : { but }) };
}

function standingOf(cell: Cell | undefined): Standing {
  if (cell?.proof === undefined) return {};
  return cell.undone === undefined ? { proof: cell.proof } : { proof: cell.proof, undone: cell.undone };
}

/**
 * Walks the records once and keeps, for every check, its last proof and what undid it. Within one record: what was
 * found, then the work, then what was left, then the checks ticked, then its ride or start. A reading with no value left
 * counts as found: in a record that also did work, what counts after it is written as `left`.
 */
export function standings(checks: readonly Check[], ground: Ground, judge: Judge, atRecord: AtRecord): Board {
  const cells = new Map<string, Cell>(checks.map((check) => [check.id, { proof: undefined, undone: undefined }]));
  const reach = makeReach(ground);
  const wiring = wiringOf(checks, ground.key, ground.content, reach);
  const undoes = undoneBy(wiring, cells);
  const cellOf = remembered((written) => cells.get(wiring.proves.get(ground.key(written)) ?? '') ?? 'no check');
  const cellsUndoneBy = cellsOf(undoes);
  const board: Board = { standing: (check) => standingOf(cells.get(check)) };
  const toucher =
    (job: Job): Touch =>
    (keys, thing, how) => {
      for (const cell of cellsUndoneBy(keys)) {
        if (cell.proof !== undefined && cell.undone === undefined) cell.undone = { job, what: thing + how };
      }
    };
  const prove = (cell: Cell | 'no check', proof: Proof | undefined): void => {
    if (cell === 'no check' || proof === undefined) return;
    cell.proof = proof;
    cell.undone = undefined;
  };
  const proveBy = (reading: Reading, values: readonly ReadingValue[], job: Job): void => {
    const check = cellOf(reading.item);
    if (check !== 'no check') prove(check, proofByReading(reading, values, job, ground, judge));
  };
  for (const job of touching(ground.jobs, wiring)) {
    const touch = toucher(job);
    const after = happensAfterChecks(job);
    for (const reading of job.readings) proveBy(reading, reading.found, job);
    if (!after) touchByKind(job, ground, touch);
    touchByWork(job, ground, reach, touch);
    for (const reading of job.readings) {
      touchBySetting(reading, ground, reach, touch);
      proveBy(reading, reading.left, job);
    }
    for (const done of job.checks) {
      prove(cellOf(done.check), done.value === undefined ? { job, done } : { job, done, value: done.value });
    }
    atRecord(job, board);
    if (after) touchByKind(job, ground, touch);
  }
  return board;
}

/** The state of a check as the sheets print it. */
export function stateOf(check: Check, standing: Standing): CheckState {
  const { proof, undone } = standing;
  if (proof === undefined) return { check, state: 'not proved' };
  const hand = proof.done?.by ?? proof.job.hands[0];
  const by = {
    job: proof.job,
    day: proof.job.date.from,
    ...(hand === undefined ? {} : { hand }),
    ...(proof.done?.checkedBy === undefined ? {} : { checkedBy: proof.done.checkedBy }),
    ...(proof.value === undefined || proof.value === '' ? {} : { value: proof.value }),
  };
  if (proof.but !== undefined) return { check, state: 'not proved', by, why: proof.but };
  if (undone !== undefined) return { check, state: 'undone', by, undoneBy: undone };
  return { check, state: 'proved', by };
}
