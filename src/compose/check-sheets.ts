// What is wrong with the files of the sheets: a view, an option, a caution or a hold point that does not exist, with its place.
import type { Book } from '../book/book.ts';
import type { Place, Problem } from '../problem/problem.ts';
import type { SheetDefinition } from '../records/content-model.ts';
import { readInterval } from '../records/kinds/interval.ts';
import { nearest } from '../records/nearest.ts';
import { viewNamed, views } from '../views/list.ts';

type Line = SheetDefinition['views'][number];

/** All problems of all sheet files, in the order of the files. */
export function checkSheets(book: Book): readonly Problem[] {
  return book.content.sheets.flatMap((sheet) => sheet.views.flatMap((line) => checkLine(book, sheet, line)));
}

function unknown(at: Place, what: string, name: string, known: readonly string[]): Problem {
  return {
    code: 'reference-unknown',
    severity: 'problem',
    at,
    message: `There is no ${what} called “${name}”.`,
    hint: hintFor(name, known),
  };
}

/** The nearest names, or all of them when none is near. */
function hintFor(name: string, known: readonly string[]): string {
  const near = nearest(name, known);
  const offered = near.length === 0 ? known : near;
  return `write ${offered.map((one) => `“${one}”`).join(' or ')}`;
}

function checkLine(book: Book, sheet: SheetDefinition, line: Line): readonly Problem[] {
  const view = viewNamed(line.view);
  const names = views.map((one) => one.id);
  if (view === undefined) return [unknown(line.at, 'view', line.view, names)];
  const options = Object.keys(line.options).filter((name) => !view.options.includes(name));
  const needsJob: readonly Problem[] =
    view.needs === 'job' && sheet.per === 'machine'
      ? [
          {
            code: 'reference-unknown',
            severity: 'problem',
            at: line.at,
            message: `“${view.id}” tells of one record, and this sheet is made for the machine.`,
            hint: 'write `per: planned job` or `per: job`',
          },
        ]
      : [];
  return [
    ...options.map((name) => unknown(line.at, `option of ${view.id}`, name, view.options)),
    ...needsJob,
    ...checkNamed(book, line),
  ];
}

function checkNamed(book: Book, { view, options, at }: Line): readonly Problem[] {
  const name = options['of'] ?? '';
  const cautions = [...book.content.cautions.keys()];
  const points = book.content.holdPoints.map((point) => point.id);
  if (view === 'caution' && !cautions.includes(name)) return [unknown(at, 'caution', name, cautions)];
  const forms = (book.content.forms ?? []).map((form) => form.id);
  if (view === 'form' && !forms.includes(name)) return [unknown(at, 'form', name, forms)];
  const within = options['within'];
  if (view === 'service-sheet' && within !== undefined) return checkHorizon(within, at);
  if (view === 'hold-point' && !points.includes(name)) return [unknown(at, 'hold point', name, points)];
  return [];
}

/** A horizon is a time, a distance, or both; hours of running cannot be foreseen. */
function checkHorizon(within: string, at: Place): readonly Problem[] {
  const read = readInterval(within);
  if (read.ok && read.value.running === undefined) return [];
  const message = `“${within}” is not a horizon to foresee services in.`;
  return [{ code: 'number-unreadable', severity: 'problem', at, message, hint: 'write `3 months or 300 mi`' }];
}
