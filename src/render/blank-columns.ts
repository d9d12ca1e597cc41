// Which columns a measuring table needs: those that at least one of its rows fills.
import type { BlankRow } from '../sheet/sheet.ts';

const optional = ['position', 'standard', 'limit', 'last', 'expected', 'verdict'] as const;

export type ColumnsInUse = Readonly<Record<(typeof optional)[number], boolean>>;

/** Says for each optional column whether any row has something to put there. */
export function columnsInUse(items: readonly BlankRow[]): ColumnsInUse {
  const used = (name: (typeof optional)[number]) => items.some((item) => (item[name] ?? '') !== '');
  return {
    position: used('position'),
    standard: used('standard'),
    limit: used('limit'),
    last: used('last'),
    expected: used('expected'),
    verdict: used('verdict'),
  };
}

/** How the reading is to be taken, in one line: condition and instrument. */
export function withWhat(item: BlankRow): string {
  return [item.condition, item.instrument].filter((word) => word !== undefined && word !== '').join(', ');
}
