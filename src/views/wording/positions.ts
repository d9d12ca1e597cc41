// Positions as the columns of a grid: few stand side by side; many are parted into lines by their leading words where that is regular.

export interface PositionGrid {
  /** What stands before the columns, line by line; one empty line where the positions need no parting. */
  readonly lines: readonly string[];
  readonly columns: readonly string[];
  /** The line and the column of a position. */
  readonly placeOf: (position: string) => { readonly line: string; readonly column: string };
}

/** More columns than this are not told apart across a page. */
const mostColumns = 6;

/** A grid for these positions, or nothing where they are too many and not regular. */
export function positionGrid(positions: readonly string[]): PositionGrid | undefined {
  const all = [...new Set(positions)];
  const deepest = Math.max(...all.map((position) => position.split(' ').length));
  for (let leading = 0; leading < deepest; leading += 1) {
    const grid = partedAfter(all, leading);
    if (grid !== undefined) return grid;
  }
  return undefined;
}

function partedAfter(all: readonly string[], leading: number): PositionGrid | undefined {
  const placeOf = (position: string): { readonly line: string; readonly column: string } => {
    const words = position.split(' ');
    return { line: words.slice(0, leading).join(' '), column: words.slice(leading).join(' ') };
  };
  const places = all.map(placeOf);
  const lines = [...new Set(places.map((place) => place.line))];
  const columns = [...new Set(places.map((place) => place.column))];
  const full = leading === 0 || lines.length * columns.length === all.length;
  return columns.length <= mostColumns && full ? { lines, columns, placeOf } : undefined;
}
