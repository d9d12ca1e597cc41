// What each column of a log holds, proposed from its heading; shown to the person, who can say otherwise.
import type { Row } from './rows.ts';

export const roles = ['date', 'odometer', 'text', 'cost'] as const;
export type Role = (typeof roles)[number];

export interface Columns {
  /** Headings, or `column 1`, `column 2` … where the file has none. */
  readonly headings: readonly string[];
  /** Whether the first row is a heading. */
  readonly headed: boolean;
  /** Indexes of the columns that hold each thing; several columns of text are put together. */
  readonly of: Readonly<Record<Role, readonly number[]>>;
}

/** Words of headings, in the languages in which people keep logs; a column that has none of them is said by the person. */
const known: Readonly<Record<Role, RegExp>> = {
  date: /\b(?:date|day|when|datum|fecha|data|jour)\b/iu,
  odometer: /\b(?:odometer|odo|clock|mileage|miles?|mi|kms?|kilomet(?:er|re)s?|kilometerstand|stand|distance)\b/iu,
  text: /\b(?:text|work|job|done|what|notes?|description|remarks?|details?|entry|arbeit|bemerkung|travail|trabajo)\b/iu,
  cost: /\b(?:cost|price|paid|amount|spent|money|total|kosten|preis|prix|precio|betrag)\b/iu,
};

/** Proposes columns from the first row. */
export function proposeColumns(rows: readonly Row[]): Columns {
  const first = rows[0]?.cells ?? [];
  const width = Math.max(0, ...rows.map((row) => row.cells.length));
  const headed = first.length > 0 && !first.some((cell) => /\d/u.test(cell));
  const headings = Array.from({ length: width }, (_, index) => {
    const heading = headed ? (first[index] ?? '') : '';
    return heading === '' ? `column ${String(index + 1)}` : heading;
  });
  const taken = new Set<number>();
  const find = (role: Role): readonly number[] => {
    const found = headed
      ? headings.flatMap((heading, index) => (!taken.has(index) && known[role].test(heading) ? [index] : []))
      : [];
    const kept = role === 'text' ? found : found.slice(0, 1);
    for (const index of kept) taken.add(index);
    return kept;
  };
  return {
    headings,
    headed,
    of: { date: find('date'), odometer: find('odometer'), cost: find('cost'), text: find('text') },
  };
}

/**
 * The columns with what the person said: `date=1, odometer=Stand, text=3+4, cost=none`. A column is named by its number or its heading.
 * Undefined, with the word that is not understood, when something is wrong.
 */
export function sayColumns(
  columns: Columns,
  said: string,
): { readonly columns: Columns } | { readonly strange: string } {
  const of: Record<Role, readonly number[]> = { ...columns.of };
  for (const part of said
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '')) {
    const equals = part.indexOf('=');
    const role = roles.find((one) => one === part.slice(0, equals).trim());
    const names = part
      .slice(equals + 1)
      .split('+')
      .map((one) => one.trim());
    if (role === undefined || equals < 0) return { strange: part };
    const found = names[0] === 'none' ? [] : names.map((name) => indexOf(columns, name));
    if (found.includes(-1)) return { strange: part };
    of[role] = found;
  }
  return { columns: { ...columns, of } };
}

function indexOf({ headings }: Columns, name: string): number {
  const byName = headings.findIndex((heading) => heading.toLowerCase() === name.toLowerCase());
  const number = /^\d+$/u.test(name) ? Number(name) - 1 : -1;
  return byName >= 0 ? byName : number < headings.length ? number : -1;
}

/** The columns that nothing was said of; their cells are kept in the words of the record. */
export function otherColumns({ headings, of }: Columns): readonly number[] {
  const taken = new Set(roles.flatMap((role) => of[role]));
  return headings.flatMap((_, index) => (taken.has(index) ? [] : [index]));
}
