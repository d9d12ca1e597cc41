// Where each page stands on a contact sheet: left to right, row after row, a label above the first page of each sheet.
import type { PagePicture } from './pages.ts';

/** A cell of the contact sheet, in pixels: the page is drawn below its label. */
export const cell = { width: 306, height: 448, label: 22 } as const;

/** Place of one page; `label` is absent for the pages that follow the first of their sheet. */
export interface PagePlace {
  readonly page: PagePicture;
  readonly left: number;
  readonly top: number;
  readonly label?: string;
}

export interface ContactPlan {
  readonly width: number;
  readonly height: number;
  readonly places: readonly PagePlace[];
}

/** Columns that make the whole nearly as wide as high, at least four: it is looked at on a screen and printed. */
export function columnsFor(pages: number): number {
  return Math.max(4, Math.ceil(Math.sqrt((pages * cell.height) / cell.width)));
}

/** The whole contact sheet for pages in the order given. */
export function contactPlan(pages: readonly PagePicture[]): ContactPlan {
  const columns = columnsFor(pages.length);
  const places = pages.map((page, at) => ({
    page,
    left: (at % columns) * cell.width,
    top: Math.floor(at / columns) * cell.height,
    ...(isFirst(page, pages[at - 1]) ? { label: labelOf(page, pages[at - 1]) } : {}),
  }));
  return { width: columns * cell.width, height: Math.ceil(pages.length / columns) * cell.height, places };
}

function isFirst(page: PagePicture, before: PagePicture | undefined): boolean {
  return before === undefined || before.sheet !== page.sheet || before.machine !== page.machine;
}

/** The machine is named with its first sheet only. */
function labelOf(page: PagePicture, before: PagePicture | undefined): string {
  return before?.machine === page.machine ? page.sheet : `${page.machine}: ${page.sheet}`;
}
