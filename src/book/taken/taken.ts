// A value that a calculation takes from the records of a machine, and the words that say where it stands.
import type { Value } from '../../calc/calculation.ts';
import type { Figure } from '../../figure/figure.ts';
import { written } from '../../figure/print.ts';
import type { Place } from '../../problem/problem.ts';
import type { Dimension, Written } from '../../quantity/quantity.ts';
import type { Setting } from '../../records/model.ts';
import type { Book } from '../book.ts';
import { sourceLine } from '../torque.ts';

export interface Taken {
  readonly value: Value;
  /** Where it stands, as a person is told: `machine.yaml: geometry, bore`. */
  readonly from: string;
  /** As a person would type it where that is not its number: teeth, `68:22`. */
  readonly typed?: string;
}

/** Which of several things of a machine is meant; what is absent is chosen and said. */
export interface Which {
  readonly fastener?: string;
  /** A limit, a setting or any other item of readings. */
  readonly item?: string;
  /** Beginning of a position: `left`, `right top`. */
  readonly at?: string;
  readonly wheel?: string;
  readonly 'in-gear'?: string;
  readonly wrench?: string;
}

export interface Ask {
  readonly book: Book;
  readonly which: Which;
}

/** Finds one value for one input; undefined where the machine does not say it. */
export type Taker = (ask: Ask) => Taken | undefined;

/** A quantity of machine.yaml with the keys that lead to it. */
export function ofMachine<D extends Dimension>(
  { book }: Ask,
  value: Written<D> | undefined,
  ...path: readonly string[]
): Taken | undefined {
  const { file } = book.records.machine;
  if (value === undefined) return undefined;
  return { value: written(value, { file, path }), from: file + ': ' + path.join(', ') };
}

/** A figure that stands in machine.yaml in another form (teeth, a count). */
export function figureOfMachine(figure: Figure, place: Place): Taken {
  return { value: figure, from: place.file + ': ' + place.path.join(', ') };
}

/** Words of machine.yaml. */
export function wordsOfMachine(
  { book }: Ask,
  words: string | undefined,
  ...path: readonly string[]
): Taken | undefined {
  if (words === undefined || words === '' || words === '?') return undefined;
  return { value: words, from: book.records.machine.file + ': ' + path.join(', ') };
}

/** Where a setting stands: the name it has in the maker's book, and the book. */
export function settingFrom(setting: Setting): string {
  return setting.name + ' (' + sourceLine(setting.source) + ')';
}

/** A setting of the makers' books by its id, where its value was read. */
export function ofSetting({ book }: Ask, id: string): Taken | undefined {
  const setting = book.settings.get(id);
  if (setting?.value.kind !== 'read') return undefined;
  const value = written(setting.value.written, setting.at, sourceLine(setting.source));
  return { value, from: settingFrom(setting) };
}
