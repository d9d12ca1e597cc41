// What is measured in the trade and has no limit or setting in this machine's books: one box a cylinder, so that every machine has a whole sheet.
import { askedUnit } from '../book/asked-unit.ts';
import { nameInRecord } from '../book/own-words.ts';
import type { FormLine } from '../records/content-model.ts';
import type { Block, Cell, Row } from '../sheet/sheet.ts';
import { anchor, column, heading, joined, paragraphs, row } from './wording/blocks.ts';
import { formNamed, linesOf } from './wording/form.ts';
import { ours } from './wording/ours.ts';
import { seriesIndex } from './wording/series-index.ts';
import { valueText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const measures = defineView({
  id: 'measures',
  purpose:
    'Boxes for the lines of a form (`of`) that the maker’s data has no limit or setting for, with the last reading.',
  needs: 'machine',
  options: ['of'],
  blocks: (context): readonly Block[] => {
    const form = formNamed(context, context.options['of']);
    if (form === undefined) return [];
    const wanted = linesOf(context, form).filter((line) => !isInBook(context, line));
    if (wanted.length === 0) return [];
    const names = cylindersOf(context);
    const [ofCylinders, ofEngine] = partedBy(isOfCylinders, wanted);
    return [
      heading(2, ours(context, form.at, form.title), anchor(form.id)),
      ...(form.note === undefined ? [] : [paragraphs(ours(context, form.at, form.note))]),
      // A single has one column for all of it; else what belongs to no cylinder must not stand below the name of one.
      ...(names.length === 1
        ? [boxes(context, wanted, names)]
        : [
            ...(ofCylinders.length === 0 ? [] : [boxes(context, ofCylinders, names)]),
            ...(ofEngine.length === 0 ? [] : [boxes(context, ofEngine, [''])]),
          ]),
    ];
  },
});

function isOfCylinders({ positions }: FormLine): boolean {
  return positions.some((place) => place.includes('cylinder'));
}

function partedBy<T>(is: (one: T) => boolean, all: readonly T[]): readonly [readonly T[], readonly T[]] {
  return [all.filter(is), all.filter((one) => !is(one))];
}

/** The lines with a box a column, below the names of their areas. */
function boxes(context: ViewContext, lines: readonly FormLine[], names: readonly string[]): Block {
  // Where nothing is read at several places, no column is kept for them.
  const placed = lines.some(({ positions }) => positions.length > 0);
  const boxed = names.map((name) => column(boxHead(context, name), 3.5));
  return {
    type: 'table',
    columns: [column('', 7), ...(placed ? [column('', 3)] : []), ...boxed],
    rows: lines.flatMap((line, index) => [
      ...(line.area === undefined || line.area === lines[index - 1]?.area ? [] : [area(context, line)]),
      ...rowsOf(context, line, names, placed),
    ]),
    empty: '',
    use: 'work',
  };
}

function isInBook({ book }: ViewContext, { id }: FormLine): boolean {
  return book.limits.has(id) || book.settings.has(id);
}

/** A single has one column, and its cylinder no name. */
export function cylindersOf({ book }: ViewContext): readonly string[] {
  const { cylinders, cylinderNames } = book.records.machine.features;
  return cylinders === 1 || cylinderNames.length === 0 ? [''] : cylinderNames;
}

/** Head of a column of boxes: `left cylinder`, or that it is what was found. */
export function boxHead({ say }: ViewContext, cylinder: string): string {
  return cylinder === '' ? say('Found') : `${cylinder} ${say('cylinder')}`;
}

function area(context: ViewContext, line: FormLine): Row {
  return { kind: 'band', text: [{ kind: 'strong', text: ours(context, line.at, line.area ?? '') }] };
}

/** A row for each place of a line. */
function rowsOf(context: ViewContext, line: FormLine, names: readonly string[], placed: boolean): readonly Row[] {
  const places = line.positions.length === 0 ? [''] : line.positions;
  const against = line.against === undefined ? undefined : ours(context, line.at, line.against);
  return places.map((place, index) => {
    const what = joined([[{ kind: 'strong', text: ours(context, line.at, line.text) }], against], ', ');
    const cells = names.map((name) => box(context, line, positionOf(place, name)));
    return row(index === 0 ? what : '', ...(placed ? [context.say(positionOf(place, ''))] : []), ...cells);
  });
}

/** `cylinder inlet` of the left one: `left inlet`. */
function positionOf(place: string, cylinder: string): string {
  return place.replace('cylinder', cylinder).trim();
}

function box({ book }: ViewContext, line: FormLine, position: string): Cell {
  const own = askedUnit(book.records.machine.units, line.unit ?? '');
  const { last: lastOf } = seriesIndex(book);
  // What no book knows stands in records under the words of its id.
  const point = lastOf(line.id, position) ?? lastOf(nameInRecord(book.records.maker, line.id), position);
  const last = valueText(point?.value);
  return {
    box: 'write',
    unit: own,
    id: `inspection/${line.id}/${position}/found`,
    ...(last === undefined ? {} : { text: last }),
  };
}
