// What layout hands to a printer: pages of items with exact places, each with its part in the reading structure.

import type { PlotBlock } from '../sheet/sheet.ts';

/** Faces of type; `strong` is the one weight of emphasis. */
export type Face = 'regular' | 'strong' | 'em';

export type Role =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'H4'
  | 'H5'
  | 'P'
  | 'BlockQuote'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Caption'
  | 'Figure'
  | 'Link'
  | 'Form';

/** A node of the reading structure, known by identity; items without a tag are page furniture. */
export interface Tag {
  readonly role: Role;
  readonly parent?: Tag;
  /** What a figure shows, in words. */
  readonly alt?: string;
  /** Of a header cell: what it heads. */
  readonly heads?: 'Column' | 'Row';
  /** Of a cell: how many columns it spans. */
  readonly span?: number;
}

interface Marked {
  readonly tag?: Tag;
}
export interface TextItem extends Marked {
  readonly kind: 'text';
  readonly x: number;
  /** The baseline. */
  readonly y: number;
  /** Width of the text without a trailing space. */
  readonly width: number;
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  /** Anchor of the same sheet that this text leads to. */
  readonly link?: string;
}
export interface LineItem extends Marked {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly weight: number;
  readonly dash?: readonly number[];
}
export interface BoxItem extends Marked {
  readonly kind: 'box';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly weight: number;
  /** What the box is for; frames are drawn round text, the others are written in. */
  readonly use: 'tick' | 'write' | 'frame' | 'cut';
  readonly id?: string;
}
/** A place to write that is not boxed: a line of a row, of a foot, of a signature. Nothing is drawn; a form has a field there. */
export interface FieldItem extends Marked {
  readonly kind: 'field';
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
export interface FillItem extends Marked {
  readonly kind: 'fill';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Share of black, at most 0.15, or 1 for a bar. */
  readonly grey: number;
}
export interface TickItem extends Marked {
  readonly kind: 'tick';
  readonly x: number;
  readonly y: number;
  readonly size: number;
}
/** A hole to be punched. */
export interface CircleItem extends Marked {
  readonly kind: 'circle';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly weight: number;
}
/** A plot of the sheet, drawn into a rectangle by the printer. */
export interface PlotItem extends Marked {
  readonly kind: 'plot';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly plot: PlotBlock;
}
export interface PhotoItem extends Marked {
  readonly kind: 'photo';
  readonly file: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
/** The dark modules of a square code, as runs along its rows. */
export interface ModulesItem extends Marked {
  readonly kind: 'modules';
  readonly x: number;
  readonly y: number;
  /** Side of one module in points. */
  readonly module: number;
  readonly runs: readonly { readonly row: number; readonly start: number; readonly length: number }[];
}
/** The number of pages, known only at the end: set after the text `before`; there is room for `width`. */
export interface TotalItem extends Marked {
  readonly kind: 'total';
  readonly x: number;
  readonly y: number;
  readonly before: string;
  readonly size: number;
  readonly width: number;
}
/** A place that links and the outline lead to. */
export interface AnchorItem extends Marked {
  readonly kind: 'anchor';
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** Outline entry: its text and its depth (1 is the sheet). */
  readonly entry?: { readonly title: string; readonly depth: number };
}
/** A node of the structure without content, such as an empty cell. */
export interface EmptyItem {
  readonly kind: 'empty';
  readonly tag: Tag;
}
export type PlacedItem =
  | TextItem
  | LineItem
  | BoxItem
  | FieldItem
  | FillItem
  | TickItem
  | CircleItem
  | PlotItem
  | PhotoItem
  | ModulesItem
  | TotalItem
  | AnchorItem
  | EmptyItem;

export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
export interface PlacedPage {
  /** From 1. */
  readonly number: number;
  readonly width: number;
  readonly height: number;
  /** Where the content stands; the running head is above it. */
  readonly frame: Frame;
  readonly items: readonly PlacedItem[];
}
