// A blank: one place on a sheet where a person writes or ticks, with all that must be known to answer it.
import type { Grade } from '../sheet/sheet.ts';

export interface Blank {
  /** Permanent id, unique in the sheet, the same on paper, in a form and wherever it is answered. */
  readonly id: string;
  readonly kind: 'value' | 'tick' | 'text';
  /** What is asked, in words: item, position. */
  readonly asks: string;
  readonly unit?: string;
  readonly standard?: string;
  readonly limit?: string;
  readonly last?: string;
  readonly expected?: string;
  /** What the record says already, as written; of a tick, `yes`. */
  readonly given?: string;
  /** The caution printed at the step. */
  readonly caution?: { readonly grade: Grade; readonly text: string };
  /** Readings, torques and lines of safety: never ticked together with others. */
  readonly singly: boolean;
  /** Id of the row whose ticks these are, where a row has several of them: they are asked as one question. */
  readonly grades?: string;
  /** Where it stands on the sheet: below which heading, in which table, at which number (as printed, else the count of the row), in which column. */
  readonly under?: string;
  readonly table?: string;
  readonly step?: string;
  readonly column?: string;
}
