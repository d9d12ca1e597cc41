// The blanks of a work table and of a ruled grid: cells that have an id, asked in the words of their row and the head of their column.
import type { Cell, GridBlock, Row, TableBlock } from '../sheet/sheet.ts';
import type { Blank } from './blank.ts';
import { plainText } from './plain-text.ts';

type CellsRow = Extract<Row, { readonly kind: 'cells' }>;
type Caution = NonNullable<Blank['caution']>;

const weight: Readonly<Record<Caution['grade'], number>> = { WARNING: 2, CAUTION: 1, NOTE: 0 };

/** Row by row, from left to right; the graded lines right above a row are its caution. */
export function tableBlanks(table: TableBlock): readonly Blank[] {
  let above: readonly Caution[] = [];
  let count = 0;
  const isNumbered = table.rows.some((row) => row.kind === 'cells' && numberOf(row) !== undefined);
  return table.rows.flatMap((row) => {
    if (row.kind === 'band') {
      if (row.grade !== undefined) above = [...above, { grade: row.grade, text: plainText(row.text) }];
      return [];
    }
    count += 1;
    const made = rowOf(table, row, joinedCaution(above), isNumbered ? undefined : String(count));
    above = [];
    return made;
  });
}

/** Cautions of one step as one, by the gravest of them. */
function joinedCaution(cautions: readonly Caution[]): Caution | undefined {
  const [gravest] = cautions.toSorted((a, b) => weight[b.grade] - weight[a.grade]);
  if (gravest === undefined) return undefined;
  const others = cautions.filter((one) => one !== gravest).map((one) => `${one.grade}: ${one.text}`);
  return { grade: gravest.grade, text: [gravest.text, ...others].join(' ') };
}

/** The number of a row as printed: `7`, or an official one such as `2.1.3`. */
function numberOf(row: CellsRow): string | undefined {
  return wordsOf(row).find((text) => /^\d+(?:\.\d+)*$/u.test(text));
}

function wordsOf(row: CellsRow): readonly string[] {
  return row.cells.map((cell) => (cell.text === undefined || cell.box !== undefined ? '' : plainText(cell.text)));
}

/** In a table without printed numbers the rows are counted. */
function rowOf(
  table: TableBlock,
  row: CellsRow,
  caution: Caution | undefined,
  counted: string | undefined,
): readonly Blank[] {
  const words = wordsOf(row);
  const number = numberOf(row) ?? counted;
  const asks = words.filter((text) => text !== '' && text !== number).join('; ');
  return row.cells.flatMap((cell, index) => {
    const head = table.columns[index]?.head ?? '';
    return cellBlank(cell, { asks, head, caution, step: number });
  });
}

interface Around {
  readonly asks: string;
  readonly head: string;
  readonly caution: Caution | undefined;
  readonly step: string | undefined;
}

function cellBlank(cell: Cell, { asks, head, caution, step }: Around): readonly Blank[] {
  if (cell.id === undefined || cell.box === undefined) return [];
  const kind = cell.box === 'tick' ? 'tick' : cell.box === 'write' ? 'value' : 'text';
  const unit = cell.about?.unit ?? cell.unit;
  const given = cell.written ?? (cell.done === true ? 'yes' : undefined);
  return [
    {
      id: cell.id,
      kind,
      asks: cell.about?.asks ?? askedBy(kind === 'text' && step !== undefined ? `Step ${step}` : asks, head),
      singly: cell.singly ?? (kind === 'value' || caution?.grade === 'WARNING'),
      ...(unit === undefined ? {} : { unit }),
      ...(cell.about?.standard === undefined ? {} : { standard: cell.about.standard }),
      ...(given === undefined || given === '' ? {} : { given }),
      ...(caution === undefined || kind === 'text' ? {} : { caution }),
      ...(cell.grades === undefined ? {} : { grades: cell.grades }),
      ...(step === undefined ? {} : { step }),
      ...(head === '' ? {} : { column: head }),
    },
  ];
}

/** The row and the head of the column, as one line. */
function askedBy(row: string, head: string): string {
  return [row, head.toLowerCase()].filter((text) => text !== '').join(': ');
}

/** Cells of a grid that are not printed full; a grid without an id keeps nothing. */
export function gridBlanks(grid: GridBlock): readonly Blank[] {
  const { id, rowsAsk } = grid;
  if (id === undefined) return [];
  if (rowsAsk !== undefined)
    return rowsAsk.map((asks, row) => ({ id: `${id}/${String(row + 1)}`, kind: 'text', asks, singly: true }));
  return Array.from({ length: grid.rows }, (_, row) =>
    grid.columns.flatMap((column, at): readonly Blank[] => {
      const printed = grid.filled?.[row]?.[at];
      if (printed !== undefined && printed !== '') return [];
      const line = grid.filled?.[row]?.[0] ?? String(row + 1);
      return [
        {
          id: `${id}/${String(row + 1)}/${String(at + 1)}`,
          kind: 'text',
          singly: false,
          // A grid of one line is asked like a line of the foot.
          ...(grid.rows === 1
            ? { asks: column.head }
            : { asks: `${column.head}, line ${line}`, column: column.head, step: line }),
        },
      ];
    }),
  ).flat();
}
