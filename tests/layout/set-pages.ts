// Sheets set for the tests of layout, and what stands on them.
import { layOut } from '../../src/layout/layout.ts';
import type { PlacedItem, PlacedPage } from '../../src/layout/placed.ts';
import { widthOf } from '../../src/pdf/faces.ts';
import type { Block, Row, Sheet } from '../../src/sheet/sheet.ts';

export function pagesOf(sheet: Sheet): readonly PlacedPage[] {
  return [...layOut(sheet, { width: widthOf })];
}
export function itemsOf<K extends PlacedItem['kind']>(
  pages: readonly PlacedPage[],
  kind: K,
): readonly Extract<PlacedItem, { kind: K }>[] {
  const is = (item: PlacedItem): item is Extract<PlacedItem, { kind: K }> => item.kind === kind;
  return pages.flatMap((page) => page.items.filter(is));
}
export function textOf(page: PlacedPage): string {
  return page.items.map((item) => (item.kind === 'text' && item.tag !== undefined ? item.text : '')).join('');
}
export function steps(count: number, text = 'Remove the part'): Row[] {
  return Array.from({ length: count }, (_, index) => ({
    kind: 'cells' as const,
    cells: [{ text: String(index + 1) }, { text: text + ' no. ' + String(index + 1) }, { box: 'tick' as const }],
  }));
}
export function workTable(rows: readonly Row[]): Block {
  const columns = [
    { head: 'step', width: 1 },
    { head: 'remove', width: 5 },
    { head: 'off', width: 1, align: 'centre' as const },
  ];
  return { type: 'table', use: 'work', empty: 'none', columns, rows };
}
