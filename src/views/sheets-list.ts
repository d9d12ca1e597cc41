// The sheets to print: each as a page and as a PDF, by the part of the job it belongs to.
import { placeOfSheet } from '../book/order-of-sheets.ts';
import type { Row } from '../sheet/sheet.ts';
import { column, row } from './wording/blocks.ts';
import { sheetsOf } from './wording/sheet-names.ts';
import type { NamedSheet } from './wording/sheet-names.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const sheetsList = defineView({
  id: 'sheets-list',
  purpose: 'Every sheet of this machine, with its page and its PDF.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { say } = context;
    return [
      {
        type: 'table',
        columns: [
          column(say('Code'), 1),
          column(say('Sheet'), 7),
          column(say('For the printer'), 4),
          column(say('First side'), 3),
        ],
        rows: rows(context),
        empty: say('There is no sheet.'),
        use: 'read',
      },
    ];
  },
});

/** Planned jobs first, each with its sheets; then the machine's, in the order of the site's contents. */
function rows({ book, say }: ViewContext): readonly Row[] {
  const all = sheetsOf(book);
  const groups = new Map<string, NamedSheet[]>();
  for (const sheet of all) {
    const name = sheet.job === undefined ? say(sheet.definition.section) : sheet.job.title;
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [sheet]);
    else group.push(sheet);
  }
  const inOrder = [...groups].toSorted(([, one], [, other]) => orderOf(one) - orderOf(other));
  return inOrder.flatMap(([name, sheets]): readonly Row[] => [
    { kind: 'band', text: [{ kind: 'strong', text: name }] },
    ...sheets.toSorted(asWorked).map((sheet) => sheetRow(say, sheet)),
  ]);
}

/** The sheets of one job stand as they are worked down; those of the machine stay in their order. */
function asWorked(one: NamedSheet, other: NamedSheet): number {
  return placeOfSheet(one.definition.id) - placeOfSheet(other.definition.id);
}

const sections = [
  'The machine',
  'This evening',
  'What is off',
  'Hold points',
  'Torque',
  'Service',
  'Measurements',
  'Parts',
  'History',
];

function orderOf([first]: readonly NamedSheet[]): number {
  if (first?.job !== undefined) return -1;
  const at = sections.indexOf(first?.definition.section ?? '');
  return at < 0 ? sections.length : at;
}

function sheetRow(say: (words: string) => string, { id, title, definition }: NamedSheet): Row {
  return row(
    definition.code,
    definition.on.includes('screen')
      ? [{ kind: 'link', text: say(definition.title), to: `sheet:${id}` }]
      : say(definition.title),
    [{ kind: 'link', text: 'PDF', to: `print:${id}` }],
    { shows: { sheet: id, alt: `${say('First side')}: ${say(title)}` } },
  );
}
