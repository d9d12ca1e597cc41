// The one shape that everything with rows and columns is brought into before it is set.
import type { Grade, Text } from '../../sheet/sheet.ts';
import type { Face } from '../placed.ts';
import type { TypeSize } from '../scale.ts';
import type { Align } from '../set-line.ts';

/** One text of a cell; several stand one under the other. */
export interface Part {
  readonly text: Text;
  readonly type?: TypeSize;
  readonly face?: Face;
}
export interface CellModel {
  readonly parts: readonly Part[];
  readonly box?: 'tick' | 'write' | 'line';
  readonly done?: boolean;
  /** Set after the box. */
  readonly unit?: string;
  /** Already written into the box. */
  readonly value?: string;
  readonly id?: string;
  /** The field of its blank goes on to the end of the row. */
  readonly across?: boolean;
}
export interface ColumnModel {
  readonly head: string;
  readonly align: Align;
  /** Relative to the other columns. */
  readonly width: number;
}
export type RowModel =
  | {
      readonly kind: 'cells';
      readonly cells: readonly CellModel[];
      readonly id?: string;
      readonly keep?: boolean;
    }
  | { readonly kind: 'band'; readonly text: Text; readonly grade?: Grade };

export interface TableModel {
  readonly columns: readonly ColumnModel[];
  readonly rows: readonly RowModel[];
  /** Rows high enough to write in. */
  readonly work: boolean;
  /** Set small and close, to be whole on one side. */
  readonly card?: boolean;
  /** A head with the names of the columns, repeated on every page. */
  readonly head: boolean;
  /** Upright rules between the columns, for a grid to write in. */
  readonly uprights?: boolean;
  /** Read as a table or as a list of one item a row. */
  readonly reads: 'table' | 'list';
  /** Columns from this one on begin the second tier where the paper is too narrow for one. */
  readonly secondTier?: number;
  /** The first cell of a row heads it. */
  readonly rowHeads?: boolean;
}
