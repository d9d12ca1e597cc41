// Makers change their data by frame number: which entries are for the frame this machine has.
import type { Machine, MakerData, Source } from '../records/model.ts';

interface Stamp {
  readonly prefix: string;
  readonly number: number;
}

/** `LP175-04417` as its letters and its last run of digits. */
function stampOf(text: string): Stamp | undefined {
  const match = /^(.*?)(\d+)\D*$/u.exec(text.replaceAll(/\s+/gu, '').toUpperCase());
  if (match === null) return undefined;
  const [, prefix = '', digits = ''] = match;
  return { prefix, number: Number(digits) };
}

function frameOf(machine: Machine): Stamp | undefined {
  const frame = machine.numbers.find((one) => one.name === 'frame');
  return frame === undefined || frame.stamped.includes('?') ? undefined : stampOf(frame.stamped);
}

/** `in`, `out`, or `not known` when the frame number or the range cannot be compared. */
export function frameFits(source: Source, machine: Machine): 'in' | 'out' | 'not known' {
  const { from, to } = source.frames ?? {};
  if (from === undefined && to === undefined) return 'in';
  const frame = frameOf(machine);
  const low = from === undefined ? undefined : stampOf(from);
  const high = to === undefined ? undefined : stampOf(to);
  if (frame === undefined || (from !== undefined && low === undefined) || (to !== undefined && high === undefined))
    return 'not known';
  if ([low, high].some((bound) => bound !== undefined && bound.prefix !== frame.prefix)) return 'out';
  const below = low !== undefined && frame.number < low.number;
  const above = high !== undefined && frame.number > high.number;
  return below || above ? 'out' : 'in';
}

/** Kept for as long as the maker's data is: while a binder is served, it is the same before and after a change of a record. */
const known = new WeakMap<MakerData, { readonly stamped: string | undefined; readonly made: MakerData }>();

/** The maker's data without the entries that are for other frame numbers; what cannot be compared is kept. */
export function forThisFrame(maker: MakerData, machine: Machine): MakerData {
  const stamped = machine.numbers.find((one) => one.name === 'frame')?.stamped;
  const before = known.get(maker);
  if (before !== undefined && before.stamped === stamped) return before.made;
  const made = fitting(maker, machine);
  known.set(maker, { stamped, made });
  return made;
}

function fitting(maker: MakerData, machine: Machine): MakerData {
  const fits = (entry: { readonly source: Source }): boolean => frameFits(entry.source, machine) !== 'out';
  return {
    ...maker,
    fasteners: maker.fasteners.filter(fits),
    limits: maker.limits.filter(fits),
    fluids: maker.fluids.filter(fits),
    settings: maker.settings.filter(fits),
    services: maker.services.filter(fits),
  };
}
