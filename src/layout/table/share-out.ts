// Room shared out among columns, so that the rows of a table become as low as they can.

export interface Wanting {
  readonly least: number;
  /** Width at which nothing of it needs a second line. */
  readonly likes: number;
  readonly ticks: boolean;
  /** Relative width, as the sheet asks. */
  readonly share: number;
  /** Length of the text in each row, in points on one line, less the rows nobody looks at. */
  readonly texts: readonly number[];
}

/** Room is given in this many parts, each to the column that gains most by it. */
const parts = 28;

/**
 * Every column has its least. Where all can have what they like, they have it, and what is left goes by the relative widths;
 * else each part of the room goes where it takes most off the height of the rows.
 */
export function shareOut(columns: readonly Wanting[], room: number): readonly number[] {
  const widths = columns.map((column) => column.least);
  const slack = room - sum(widths);
  if (slack <= 0) return widths;
  const wanted = sum(columns.map((column) => column.likes - column.least));
  if (wanted <= slack)
    return byShares(
      columns,
      columns.map((column) => column.likes),
      slack - wanted,
    );
  const step = slack / parts;
  for (let part = 0; part < parts; part += 1) {
    const gains = gainsOf(columns, widths);
    const best = gains.indexOf(Math.max(...gains));
    widths[best] = (widths[best] ?? 0) + step;
  }
  return widths;
}

function byShares(columns: readonly Wanting[], widths: readonly number[], slack: number): readonly number[] {
  const open = columns.map((column) => (column.ticks && columns.some((other) => !other.ticks) ? 0 : column.share));
  const shares = sum(open);
  return widths.map((width, index) => width + (slack * (open[index] ?? 0)) / shares);
}

/**
 * How fast all rows together become lower as each column becomes wider. The height of a row is taken as a mean of its cells in
 * which the tallest counts by far the most, so that it counts for something to lower the second tallest as well.
 */
function gainsOf(columns: readonly Wanting[], widths: readonly number[]): readonly number[] {
  const gains = columns.map((column, index) => ((widths[index] ?? 0) < column.likes ? column.share * 1e-6 : 0));
  const rows = columns.reduce((most, column) => Math.max(most, column.texts.length), 0);
  for (let row = 0; row < rows; row += 1) {
    const powers = columns.map((column, index) => lines(column.texts[row] ?? 0, widths[index] ?? 1) ** 6);
    const height = sum(powers) ** (5 / 6);
    if (height === 0) continue;
    for (const [index, power] of powers.entries()) {
      if (power > 1) gains[index] = (gains[index] ?? 0) + power / height / (widths[index] ?? 1);
    }
  }
  return gains;
}

/** Lines of a text in a width: a little more than its length asks, since lines are never full. */
function lines(text: number, width: number): number {
  return text <= width ? Math.min(1, text) : (text * 1.12) / width;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
