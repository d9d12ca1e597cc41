// The pocket card, as large as a bank card: the torques and settings that are asked for with the tool already in the hand.
import { printFigure, printRange } from '../figure/print.ts';
import type { TorqueRow } from '../book/book.ts';
import type { Machine } from '../records/model.ts';
import type { CardsBlock, Text } from '../sheet/sheet.ts';
import { richerText } from './air-and-jet.ts';
import { airTable } from './figures/air.ts';
import type { AirCell } from './figures/air.ts';
import { cardFoot } from './wording/records-up-to.ts';
import { canTable, premixSetting } from './wording/oil-for-fuel.ts';
import { valueText } from './wording/value.ts';
import { torqueAsWritten, torqueInOtherUnits } from './wording/torque.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const card = { width: 86, height: 54 } as const;

export const pocketCard = defineView({
  id: 'pocket-card',
  purpose: 'Torques and settings on cards as large as a bank card.',
  needs: 'machine',
  options: ['of'],
  blocks: (context): readonly CardsBlock[] => {
    const { say, options } = context;
    const wanted = options['of'];
    const torques = wanted === 'settings' ? [] : cards(context, say('Torque'), torqueLines(context));
    const settings = wanted === 'torque' ? [] : cards(context, say('Settings'), settingLines(context));
    const oil = wanted === 'torque' ? [] : cards(context, say('Oil in the petrol'), canLines(context));
    // Torque first: it is asked for with the tool in the hand. Mixture in other air is on the settings card.
    const all = [...torques, ...oil, ...settings];
    // An empty sheet looks like a fault of the printer.
    const none = cards(context, say('On this card'), [say('Nothing that belongs on it is recorded.')]);
    const { width, height } = card;
    return [{ type: 'cards', size: { width, height }, hole: true, small: true, cards: all.length === 0 ? none : all }];
  },
});

/** Oil for a can at the ratio of the settings; only for an engine that is fed so. */
export function canLines({ book, say }: ViewContext): readonly Text[] {
  const mixes = canTable(book);
  const ratio = valueText(premixSetting(book)?.value);
  if (mixes.length === 0 || ratio === undefined) return [];
  const told = mixes.map(({ fuel, oil }) => `${printFigure(fuel)} ${printFigure({ ...oil, decimals: 0 })}`);
  return [[`${say('Oil for a can at')} ${ratio}: `, { kind: 'strong', text: told.join(' · ') }]];
}

/** Mixture by altitude and temperature, with the jet by both systems of numbering where one is recorded. */
export function airLines({ book, say }: ViewContext): readonly Text[] {
  const air = airTable(book);
  const temperatures = air?.rows[0]?.cells.map((cell) => printFigure(cell.temperature)).join(' · ');
  if (air === undefined || temperatures === undefined) return [];
  const jet = air.jet === undefined ? '' : `, ${say('jet')} ${printFigure(air.jet)}`;
  const inBrackets = air.jet === undefined ? '' : ` (${say('jet by bore / by flow number')})`;
  return [
    `${say('Jetted at')} ${printFigure(air.home)}, ${printFigure(air.mild)}${jet}. ${say('Richer by')}${inBrackets} ${say('at')} ${temperatures}:`,
    ...air.rows.map((one): Text => [
      { kind: 'strong', text: `${printFigure(one.altitude)}: ` },
      one.cells.map(airWords).join(' · '),
    ]),
  ];
}

function airWords(cell: AirCell): string {
  const [bore, flow] = [cell.bore, cell.flow].map((one) => (one === undefined ? undefined : printFigure(one)));
  return `${richerText(cell)}${bore === undefined || flow === undefined ? '' : ` (${bore}/${flow})`}`;
}

function torqueLines({ book, say }: ViewContext): readonly Text[] {
  const carrying = book.torque.filter((one) => one.basis === 'maker');
  const lines = carrying.map((one): Text => [
    `${one.fastener.name}: `,
    ...torqueWords(one, say, book.records.machine.units),
  ]);
  return [
    ...lines,
    ...leftOut(say('Not on this card, no value is known'), book.torque, 'none'),
    ...leftOut(say('Not on this card, worked out and not the maker’s'), book.torque, 'computed'),
  ];
}

/** A card that leaves fasteners out says which. */
function leftOut(words: string, torque: readonly TorqueRow[], basis: TorqueRow['basis']): readonly Text[] {
  const names = torque.filter((one) => one.basis === basis).map(({ fastener }) => fastener.name);
  return names.length === 0 ? [] : [[{ kind: 'strong', text: `${words}: ` }, names.join('; ')]];
}

function torqueWords(
  { value, fastener }: TorqueRow,
  say: (words: string) => string,
  units: Machine['units'],
): Exclude<Text, string> {
  if (value === undefined) return [say('not known')];
  const [other] = torqueInOtherUnits(value, units);
  const threads = fastener.threads === undefined ? '' : `, ${say(fastener.threads)}`;
  return [{ kind: 'strong', text: torqueAsWritten(value, units) }, ` (${other ?? ''})${threads}`];
}

function settingLines({ book, say }: ViewContext): readonly Text[] {
  return book.records.maker.settings.map((setting): Text => {
    const range = setting.range === undefined ? '' : ` (${printRange(setting.range)})`;
    const value = valueText(setting.value);
    return [`${setting.name}: `, { kind: 'strong', text: value ?? say('not known') }, range];
  });
}

/** One card with all its lines; a printer goes on with it on the next card where they do not fit. */
function cards({ book }: ViewContext, title: string, lines: readonly Text[]): CardsBlock['cards'] {
  const foot = cardFoot(book);
  return lines.length === 0 ? [] : [{ title, lines, foot }];
}
