// What a drawing in true scale is made of.

/** A line, a circle or a label of a drawing; lengths are millimetres, x grows to the right, y downwards from the upper left corner. */
export type DrawingMark =
  | {
      readonly kind: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly heavy?: boolean;
      readonly dashed?: boolean;
    }
  | { readonly kind: 'circle'; readonly x: number; readonly y: number; readonly radius: number }
  /** `y` is the baseline; `anchor` says which end of the text stands at `x`. */
  | {
      readonly kind: 'label';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly strong?: boolean;
    };
