// The waist: what a sheet is made of. Views make blocks and know nothing of paper; printers draw blocks and know nothing of motorcycles.
// Everything here is ready to print: texts are final, numbers are formatted, dialect is chosen.

import type { DrawingMark } from './drawing-mark.ts';
import type { Fact } from './fact.ts';

export type { DrawingMark };
export type { Page } from './page.ts';

/** A run of text inside a line. A plain string is the common case. */
export type Inline =
  | string
  | { readonly kind: 'strong' | 'em' | 'code' | 'struck'; readonly text: string }
  /** href: `https:`/`mailto:` are shown as text, never linked out; otherwise a PageRef like `job:2024-05-04-bought`. */
  | { readonly kind: 'link'; readonly text: string; readonly to: string }
  /** A number with its unit (never parted at a line end); `to` leads to its working; `mark` is its origin in one letter or word. */
  | { readonly kind: 'figure'; readonly text: string; readonly to?: string; readonly mark?: string };

export type Text = string | readonly Inline[];

/** Paragraph-level prose made from a Markdown body. */
export type Paragraph =
  | { readonly kind: 'paragraph'; readonly text: Text }
  | { readonly kind: 'heading'; readonly level: 3 | 4; readonly text: Text }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Paragraph[])[] }
  | { readonly kind: 'quote'; readonly paragraphs: readonly Paragraph[] }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'table'; readonly head: readonly Text[]; readonly rows: readonly (readonly Text[])[] }
  | { readonly kind: 'photo'; readonly photo: PhotoBlock };

/** What is drawn in a table cell besides text. Boxes are drawn, never typed. */
export interface Cell {
  readonly text?: Text;
  /** `tick`: a 5–6 mm box; `write`: a box at least 25 × 9 mm; `line`: a writing line. `done` draws the tick inside. */
  readonly box?: 'tick' | 'write' | 'line';
  readonly done?: boolean;
  /** Unit printed after a write box. */
  readonly unit?: string;
  /** Set large, as a value to be read at arm's length. */
  readonly big?: boolean;
  /** Permanent id of the blank, the same on paper, in a form and in the record's way in. */
  readonly id?: string;
  /** What is asked here and what it should be, for who fills it in, where the row alone does not say it. */
  readonly about?: { readonly asks: string; readonly unit?: string; readonly standard?: string };
  /** What the record says here already, as written. */
  readonly written?: string;
  /** A reading, a torque or a line of safety: answered by itself, never together with others. */
  readonly singly?: boolean;
  /** On a screen the first side of this sheet is shown small, and leads to its PDF, where there is one. */
  readonly shows?: { readonly sheet: string; readonly alt: string };
  /** Id of the row whose ticks these are, where a row has several of them, as for grades: they are answered together. */
  readonly grades?: string;
}

export type Row =
  | { readonly kind: 'cells'; readonly cells: readonly Cell[]; readonly id?: string }
  /** A line across all columns: a caution, a group name, a note. */
  | { readonly kind: 'band'; readonly text: Text; readonly grade?: Grade };

export interface Column {
  readonly head: string;
  readonly align?: 'left' | 'right' | 'centre';
  /** Relative width; tick columns are fixed by the printer. */
  readonly width: number;
}

/** Three grades, text only: WARNING (person), CAUTION (machine), NOTE. */
export type Grade = 'WARNING' | 'CAUTION' | 'NOTE';

export interface HeadingBlock {
  readonly type: 'heading';
  readonly level: 1 | 2 | 3;
  readonly text: Text;
  /** Anchor, unique in the sheet. */
  readonly id: string;
  /** All up to the next heading of its level stays on one page, where that is less than two fifths of one. */
  readonly whole?: boolean;
}
export interface ProseBlock {
  readonly type: 'prose';
  readonly paragraphs: readonly Paragraph[];
}
export interface FactsBlock {
  readonly type: 'facts';
  readonly facts: readonly Fact[];
  /** Set in one, two or three pairs a line on paper. */
  readonly across?: 1 | 2 | 3;
}
export interface TableBlock {
  readonly type: 'table';
  readonly caption?: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Printed in place of rows when there are none. */
  readonly empty: string;
  /** `work` tables have 9 mm rows for a pencil; `read` tables are set tight; a `card` is set small, to be whole on one side. */
  readonly use: 'work' | 'read' | 'card';
}
export interface ChecklistBlock {
  readonly type: 'checklist';
  readonly items: readonly {
    readonly id: string;
    readonly text: Text;
    readonly why?: Text;
    readonly done?: boolean;
    /** A value to be written beside the tick; its id is the item's with `/value`. */
    readonly blank?: { readonly unit: string; readonly hint?: string; readonly written?: string };
    /** A line of safety: ticked by itself, never together with others. */
    readonly singly?: boolean;
    readonly state?: Text;
    readonly caution?: { readonly grade: Grade; readonly text: string };
  }[];
}
/** The measuring table: one item a row, found and left, standard and limit, last reading and what to expect. */
export interface BlanksBlock {
  readonly type: 'blanks';
  readonly items: readonly BlankRow[];
  readonly empty: string;
}
export interface BlankRow {
  /** The two boxes are `<id>/found` and `<id>/left`. */
  readonly id: string;
  readonly item: Text;
  readonly position?: string;
  readonly unit: string;
  readonly standard?: string;
  readonly limit?: string;
  readonly last?: string;
  readonly expected?: string;
  readonly found?: string;
  readonly left?: string;
  readonly verdict?: string;
  readonly instrument?: string;
  readonly condition?: string;
  readonly note?: Text;
}
export interface CautionBlock {
  readonly type: 'caution';
  readonly grade: Grade;
  readonly text: string;
}
/** A plot described once, drawn as SVG on screen and as vectors on paper; its table stands beside it. */
export interface PlotBlock {
  readonly type: 'plot';
  readonly title: string;
  /** One sentence for who cannot see it. */
  readonly description: string;
  readonly x: { readonly label: string; readonly kind: 'day' | 'number' };
  readonly y: { readonly label: string };
  readonly series: readonly {
    readonly name: string;
    readonly mark: 'dot' | 'square' | 'triangle' | 'cross';
    readonly line: 'solid' | 'dashed' | 'dotted' | 'none';
    /** x is a day number (days since 1970-01-01) or a plain number. */
    readonly points: readonly { readonly x: number; readonly y: number; readonly label?: string }[];
  }[];
  readonly limits: readonly {
    readonly name: string;
    readonly y: number;
    readonly line: 'solid' | 'dashed' | 'dotted';
  }[];
}
export interface PhotoBlock {
  readonly type: 'photo';
  /** Path of the original below the machine folder. */
  readonly file: string;
  readonly caption: Text;
  readonly alt: string;
  readonly taken?: string;
  /** Pixel size of the turned picture, when known. */
  readonly width?: number;
  readonly height?: number;
  readonly size: 'full' | 'half' | 'small';
}
/** Cards printed n-up with cut marks: tags, labels, the handlebar card. */
export interface CardsBlock {
  readonly type: 'cards';
  /** Of one card, in millimetres. */
  readonly size: { readonly width: number; readonly height: number };
  readonly hole: boolean;
  /** Set in the smallest type that is printed: a card read in the hand. */
  readonly small?: boolean;
  readonly cards: readonly {
    readonly title: string;
    readonly lines: readonly Text[];
    readonly code?: string;
    readonly foot?: string;
    /** A blank one: printed where it takes no page of its own. */
    readonly spare?: boolean;
  }[];
}
/** An empty ruled grid to write in: a run log, a grid of characters. */
export interface GridBlock {
  readonly type: 'grid';
  /** Permanent; a cell to write in is `<id>/<row>/<column>`, both counted from 1. Without it, what is written stays on paper. */
  readonly id?: string;
  readonly caption?: string;
  /** Where a row is one answer, a letter in each square: what each row asks. Its blank is `<id>/<row>`. */
  readonly rowsAsk?: readonly string[];
  readonly columns: readonly Column[];
  readonly rows: number;
  /** Text already written in the first rows, row by row. */
  readonly filled?: readonly (readonly string[])[];
}
/** A drawing that is laid on the metal: true to scale on paper, with a line of 100 mm to prove it; never made to fit. */
export interface DrawingBlock {
  readonly type: 'drawing';
  readonly title: string;
  /** One sentence for who cannot see it. */
  readonly description: string;
  /** In millimetres. */
  readonly size: { readonly width: number; readonly height: number };
  readonly marks: readonly DrawingMark[];
  /** Not in true scale: a picture only, without the line that proves a print; here arranged anew for a narrow screen. */
  readonly sketch?: {
    readonly size: { readonly width: number; readonly height: number };
    readonly marks: readonly DrawingMark[];
  };
}
export interface SignatureBlock {
  readonly type: 'signature';
  readonly lines: readonly {
    readonly role: string;
    readonly name?: string;
    readonly date?: string;
    /** Permanent; the blank of the name, and with `/date` that of the day. Without it, what is written stays on paper. */
    readonly id?: string;
  }[];
}
export interface BreakBlock {
  readonly type: 'break';
  /** `page` begins a new page on paper; `back` begins the back of the leaf. */
  readonly to: 'page' | 'back';
}
/** A square code with its text beneath: the address of this page, or machine and job code. */
export interface CodeBlock {
  readonly type: 'code';
  readonly text: string;
  readonly caption: string;
}

export type Block =
  | HeadingBlock
  | ProseBlock
  | FactsBlock
  | TableBlock
  | ChecklistBlock
  | BlanksBlock
  | CautionBlock
  | PlotBlock
  | PhotoBlock
  | CardsBlock
  | GridBlock
  | DrawingBlock
  | SignatureBlock
  | BreakBlock
  | CodeBlock;

export type BlockType = Block['type'];
/** On a tag or a card of its own only the cards of a sheet are printed, one to a side. */
export type Paper = 'a4' | 'letter' | 'a5' | 'half-letter' | 'tag' | 'card';

export interface Sheet {
  /** Permanent id, also the file name: `torque-table`, `teardown-2026-11-top-end`. */
  readonly id: string;
  /** Two or three letters printed on every page: `TQ`. */
  readonly code: string;
  readonly title: string;
  readonly language: 'en-GB' | 'en-US';
  /** Head of every page: machine, last characters of the frame number, date and version of the records. */
  readonly machine: string;
  readonly frame: string;
  readonly recordsDate: string;
  /** The same day as `2026-10-17`, for the file itself; empty where nothing is recorded yet. */
  readonly recordsDay: string;
  readonly recordsVersion: string;
  readonly paper: Paper;
  readonly binding: 'left' | 'top';
  /** Printed on one side of each leaf, or on both: then the punched margin changes sides with the page. */
  readonly sides?: 'one' | 'both';
  /** A job sheet has a foot to be filled in: state left in, next, hand, date. */
  readonly foot: 'none' | 'sign off';
  /** Id of the job record that keeps what is written on this sheet; of a sheet of the machine, none. */
  readonly job?: string;
  /** Kinds of job whose record keeps what is written on this sheet of the machine. */
  readonly keptBy?: readonly string[];
  readonly continues?: string;
  /** What is missing from this sheet because a record could not be read, in sentences. Printed at the head. */
  readonly leftOut: readonly string[];
  readonly blocks: readonly Block[];
  /** Address or code printed as a square code at the head, if any. */
  readonly squareCode?: string;
  /** The file carries the binder's data for other programs. */
  readonly carriesData?: boolean;
  /** Made only when it is asked for by its name: `all` leaves it out. */
  readonly byName?: boolean;
}
