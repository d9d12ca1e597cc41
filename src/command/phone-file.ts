// The sheets of a job as a page for a telephone: blanks that ask the same thing stand together.
import type { Binder, Sheet } from '../build.ts';
import type { Blank } from '../entry/blank.ts';
import { blanksOf } from '../entry/blanks-of.ts';
import { withoutTwice } from '../entry/foot-blanks.ts';
import { machineSheetsFor, sheetsOfJob } from '../entry/sheets-of-job.ts';
import type { PhoneField, PhoneLot, PhonePage, PhonePart } from '../render/phone-page.ts';
import { asking, carriedBy, type Asking } from './sheet-form.ts';

/** Every planned job of a binder as a page, a file below the output folder each. `textOf` gives the text of a record. */
export function phonePages(
  binder: Binder,
  textOf: (file: string) => string | undefined,
): readonly { readonly file: string; readonly page: () => PhonePage | undefined }[] {
  return binder.book.plans.map(({ job }) => ({
    file: `phone/${job.id}.html`,
    page: () => {
      const sheets = [...machineSheetsFor(binder.sheets, job.kind), ...sheetsOfJob(binder.sheets, job.id)];
      return phonePage(asking(job, sheets), textOf(job.file) ?? '');
    },
  }));
}

/** The page of one job, from all its sheets; undefined when it has none. */
export function phonePage(asked: Asking, recordText: string): PhonePage | undefined {
  const { job, sheets, blanks } = asked;
  const [first] = sheets;
  if (first === undefined) return undefined;
  const places = new Map(blanks.map(({ id }, index) => [id, `b${String(index + 1)}`]));
  const frame = first.frame === '' ? '' : ` · frame …${first.frame}`;
  return {
    title: job.title,
    machine: first.machine,
    about: `${first.machine}${frame} · records of ${first.recordsDate}, version ${first.recordsVersion}`,
    language: first.language,
    carried: JSON.stringify(carriedBy(asked, recordText)),
    parts: partsOf(sheets, blanks, places),
  };
}

/** A blank stands at the first sheet that asks it; what all sheets end with stands once, at the end. */
function partsOf(
  sheets: readonly Sheet[],
  blanks: readonly Blank[],
  places: ReadonlyMap<string, string>,
): readonly PhonePart[] {
  const owner = new Map<string, Sheet>();
  for (const sheet of sheets) for (const { id } of blanksOf(sheet)) if (!owner.has(id)) owner.set(id, sheet);
  const parts: { title: string; blanks: Blank[] }[] = [];
  for (const blank of withoutTwice(blanks)) {
    const title = isFoot(blank) ? 'At the end' : (owner.get(blank.id)?.title ?? '');
    const last = parts.at(-1);
    if (last?.title === title) last.blanks.push(blank);
    else parts.push({ title, blanks: [blank] });
  }
  return parts.map((part) => ({ title: part.title, lots: lotsOf(part.blanks, places) }));
}

function isFoot({ id }: Blank): boolean {
  return /\/foot\/[a-z-]+$/u.test(id);
}

interface Lot {
  readonly shared: string;
  readonly blanks: Blank[];
}

/** Blanks of one step that differ in their last words only stand together, and with them the line to write on beside them. */
function lotsOf(blanks: readonly Blank[], places: ReadonlyMap<string, string>): readonly PhoneLot[] {
  const lots: Lot[] = [];
  for (const blank of blanks) {
    const last = lots.at(-1);
    const { shared } = parted(blank);
    const [before] = last?.blanks ?? [];
    const alike = last?.shared === shared && before?.step === blank.step;
    if (alike || (before !== undefined && isBeside(blank, before))) last?.blanks.push(blank);
    else lots.push({ shared, blanks: [blank] });
  }
  return lots.flatMap((lot, index) => {
    const above = lots[index - 1]?.blanks[0];
    const [first, second] = lot.blanks;
    if (first === undefined) return [];
    // A caution stands once above all that it is for.
    const same = lot.blanks.every(({ asks }) => asks === first.asks);
    const again = first.step !== undefined && above?.step === first.step && above.caution?.text === first.caution?.text;
    return [
      {
        step: lot.blanks.some(({ asks }) => /, line \S+$/u.test(asks)) ? '' : (first.step ?? ''),
        asks: second === undefined || same ? wholeOf(first) : lot.shared,
        about: aboutOf(first),
        ...(first.caution === undefined || again ? {} : { caution: first.caution }),
        fields: lot.blanks.map((blank) =>
          fieldOf(blank, same ? ofKind[blank.kind] : parted(blank).label, places.get(blank.id) ?? ''),
        ),
      },
    ];
  });
}

/** What tells a tick from the value beside it, where both ask the same. */
const ofKind: Readonly<Record<Blank['kind'], string>> = { tick: 'done', value: 'value', text: 'in words' };

/** A line to write on in the row of another blank: it is named by its column, and the row by the other. */
function isBeside(blank: Blank, before: Blank): boolean {
  return isNote(blank) && blank.table === before.table && blank.step === before.step && !isNote(before);
}

function isNote({ kind, asks, step }: Blank): boolean {
  return kind === 'text' && step !== undefined && asks.startsWith(`Step ${step}: `);
}

/** The words that several blanks share, and those that tell one from the others. */
function parted(blank: Blank): { readonly shared: string; readonly label: string } {
  const { asks, kind, column = '' } = blank;
  if (isNote(blank)) return { shared: `Step ${blank.step ?? ''}`, label: column };
  // Words that end otherwise than in the head of their column are one sentence, whatever commas it has.
  const head = column.toLowerCase();
  const endsInHead = [': ', ', ', ', back '].some((between) => asks.toLowerCase().endsWith(between + head));
  // A step that takes nothing off is done, though its tick stands under “off”.
  if (kind === 'tick' && head !== '' && !endsInHead)
    return { shared: asks, label: head === 'off' ? ofKind.tick : head };
  const at = Math.max(asks.lastIndexOf(', '), asks.lastIndexOf(': '));
  return at < 0 ? { shared: asks, label: asks } : { shared: asks.slice(0, at), label: asks.slice(at + 2) };
}

/** Where the row does not say it, the head of the column says what is to be written. */
function wholeOf(blank: Blank): string {
  const { asks, column = '', kind } = blank;
  // The number stands before it already.
  if (isNote(blank)) return column;
  const said = column === '' || kind !== 'text' || asks.toLowerCase().includes(column.toLowerCase());
  return said ? asks : `${asks}: ${column.toLowerCase()}`;
}

function aboutOf({ standard, limit, last, expected }: Blank): string {
  const parts = [
    standard === undefined ? '' : `standard ${standard}`,
    limit === undefined ? '' : `limit ${limit}`,
    last === undefined ? '' : `last ${last}`,
    expected === undefined ? '' : `expect ${expected}`,
  ];
  return parts.filter((part) => part !== '').join('; ');
}

function fieldOf(blank: Blank, label: string, place: string): PhoneField {
  const { id, kind, asks, unit = '', limit = '', last = '', given = '' } = blank;
  return { id, place, kind, asks, label, unit, limit, last, given };
}
