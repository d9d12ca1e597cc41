// What the page of the next test works with, as the file beside it gives it: refused as a whole when it is not what the page was made with.
import type { OddsTable } from '../calc/faults/odds-table.ts';

export interface BenchTest {
  readonly id: string;
  readonly name: string;
  readonly short: string;
  readonly how: string;
  readonly notice: boolean;
  readonly cautions: readonly string[];
  readonly outcomes: readonly { readonly id: string; readonly words: string; readonly stop: string }[];
}

export interface BenchData {
  readonly table: OddsTable;
  readonly tests: readonly BenchTest[];
  readonly causes: readonly {
    readonly id: string;
    readonly group: string;
    readonly name: string;
    readonly cure: string;
  }[];
  /** `test=outcome` that the records have seen already. */
  readonly seen: readonly string[];
}

declare global {
  interface Window {
    splitpinBench?: unknown;
  }
}

/** What the data file put into the window; undefined when it is not there, or not what it should be. */
export function readBenchData(value: unknown): BenchData | undefined {
  return isBenchData(value) ? value : undefined;
}

function isBenchData(value: unknown): value is BenchData {
  return (
    typeof value === 'object' &&
    value !== null &&
    'table' in value &&
    'tests' in value &&
    'causes' in value &&
    'seen' in value
  );
}
