// Corrections: the old value stays, struck through; the new one takes its place in everything that is computed.
import type { Correction, Job, Value } from '../records/model.ts';
import type { Read, Written } from '../quantity/quantity.ts';
import { readAnyQuantity, readQuantity } from '../quantity/read-quantity.ts';
import type { SeriesPoint } from './book.ts';
import type { Draft } from './points-of-record.ts';
import type { Measure } from './verdict.ts';

export interface CorrectionDone {
  readonly job: Job;
  readonly correction: Correction;
  /** The readings it replaced; empty when none had that value. */
  readonly replaced: readonly SeriesPoint[];
}

/** A place in a series: the value that counts now, those struck out before it, and what it is judged by. */
export interface Slot {
  /** Absent until the first correction: thousands of readings have none. */
  struck?: SeriesPoint[];
  live: Draft;
  readonly measure: Measure | undefined;
}

function plain(text: string): string {
  return text.replaceAll(/[\s\u00a0\u202f\u2009]+/gu, ' ').trim();
}

/** Read as the old value's kind of thing where it had one: a ratio and a count look alike. */
function readLike(text: string, old: Value): Read<Written> {
  return old.kind === 'read' ? readQuantity(text, old.written.unit.dimension) : readAnyQuantity(text);
}

/** The new value; a text that is no quantity is kept as words. */
function valueOf(text: string, old: Value): Value {
  if (plain(text) === '?') return { kind: 'unknown' };
  const read = readLike(text, old);
  return read.ok ? { kind: 'read', written: read.value } : { kind: 'words', text };
}

/** Written alike, or the same quantity written differently. */
function isValue(value: Value, text: string): boolean {
  if (value.kind === 'unknown') return plain(text) === '?';
  if (value.kind === 'words') return plain(value.text) === plain(text);
  if (plain(value.written.text) === plain(text)) return true;
  const read = readLike(text, value);
  return read.ok && read.value.quantity === value.written.quantity;
}

/** Replaces what the correction names in the readings of its record and item. */
export function correct(slots: readonly Slot[], correction: Correction, job: Job): CorrectionDone {
  const replaced: SeriesPoint[] = [];
  for (const slot of slots) {
    const old = slot.live;
    if (correction.position !== undefined && correction.position !== old.position) continue;
    if (!isValue(old.value, correction.was)) continue;
    const struck: SeriesPoint = { ...old, corrected: { by: job, why: correction.why } };
    slot.struck = [...(slot.struck ?? []), struck];
    slot.live = { ...old, value: valueOf(correction.is, old.value), at: correction.at };
    replaced.push(struck);
  }
  return { job, correction, replaced };
}
