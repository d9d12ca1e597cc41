// The sheets to print: each as a page and as a PDF, by the part of the job it belongs to.
import type { Row } from '../sheet/sheet.ts';
import { column, row } from './wording/blocks.ts';
import { sheetsOf } from './wording/sheet-names.ts';
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
        columns: [column(say('Code'), 1), column(say('Sheet'), 7), column(say('For the printer'), 4)],
        rows: rows(context),
        empty: say('There is no sheet.'),
        use: 'read',
      },
    ];
  },
});

function rows({ book, say }: ViewContext): readonly Row[] {
  const all = sheetsOf(book);
  const sections = [...new Set(all.map((sheet) => sheet.definition.section))];
  return sections.flatMap((section): readonly Row[] => [
    { kind: 'band', text: [{ kind: 'strong', text: say(section) }] },
    ...all
      .filter((sheet) => sheet.definition.section === section)
      .map((sheet) =>
        row(
          sheet.definition.code,
          [{ kind: 'link', text: say(sheet.title), to: `sheet:${sheet.id}` }],
          [{ kind: 'link', text: 'PDF', to: `print:${sheet.id}` }],
        ),
      ),
  ]);
}
