// The pocket card, as large as a bank card: the torques and settings that are asked for with the tool already in the hand.
import { printRange } from '../figure/print.ts';
import type { TorqueRow } from '../book/book.ts';
import type { Machine } from '../records/model.ts';
import type { CardsBlock, Text } from '../sheet/sheet.ts';
import { dayText } from './wording/day.ts';
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
    const all = [...settings, ...torques];
    return [{ type: 'cards', size: { width: card.width, height: card.height }, hole: true, cards: all }];
  },
});

function torqueLines({ book, say }: ViewContext): readonly Text[] {
  const carrying = book.torque.filter((one) => one.basis === 'maker');
  return carrying.map((one): Text => [`${one.fastener.name}: `, ...torqueWords(one, say, book.records.machine.units)]);
}

function torqueWords(
  { value, fastener }: TorqueRow,
  say: (words: string) => string,
  units: Machine['units'],
): Exclude<Text, string> {
  if (value === undefined) return [say('not known')];
  const others = torqueInOtherUnits(value, units).join('; ');
  const threads = fastener.threads === undefined ? '' : `, ${say(fastener.threads)}`;
  return [{ kind: 'strong', text: torqueAsWritten(value, units) }, ` (${others})${threads}`];
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
  const foot = `${book.records.machine.name}, ${dayText(book.recordsDate)}`;
  return lines.length === 0 ? [] : [{ title, lines, foot }];
}
