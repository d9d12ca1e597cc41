// Before a package is written: what goes and what stays, in lines to be read by the owner.
import type { BuyersCopy, LeftOut } from '../../handover/buyers-copy.ts';
import { patternOf } from '../../handover/private-value.ts';
import type { Records } from '../../records/model.ts';
import { count } from '../count.ts';
import { placeInWords } from './place-in-words.ts';

/** The lines, what stays first: that is what has to be read. */
export function whatGoes(copy: BuyersCopy, records: Records, withoutPrices: boolean): readonly string[] {
  return [
    'Stays with you:',
    ...stays(copy, withoutPrices).map((line) => '  ' + line),
    'Goes to the buyer:',
    ...goes(copy, records, withoutPrices).map((line) => '  ' + line),
    'What this program cannot find, and only you can: first names, nicknames and places that stand in running words and under no',
    'key; firms, which go as they are named above; faces, plates and writing in photographs. A name is known to it by a key',
    '(`hands`, `by`, `signed`, a seller under `from`, who got it under `to`, who has the old part under `original kept`),',
    'by a title (Mrs, Dr) or by “my brother …”.',
    'Read the records once more. What should stay goes under `private words` in machine.yaml, parts of photographs under',
    '`cover`, whole ones under `private: yes`; a name in the first list that may go is said with --may-go.',
  ];
}

function stays(copy: BuyersCopy, withoutPrices: boolean): readonly string[] {
  const lines = copy.leftOut.map(line);
  const whole = copy.staying.map((file) => `${file} (the whole file)`);
  return [
    ...new Set(lines),
    ...(withoutPrices ? ['every price and amount, in keys and in words'] : []),
    ...whole,
    'what cameras wrote into photographs',
  ];
}

function line({ what, text, at, covered }: LeftOut): string {
  const times = covered > 1 ? `, ${String(covered)} times in all` : '';
  return `${what}${text === '' ? '' : ` “${short(text)}”`} (${placeInWords(at)}${times})`;
}

function short(text: string): string {
  return text.length > 60 ? text.slice(0, 59) + '…' : text;
}

function goes(copy: BuyersCopy, records: Records, withoutPrices: boolean): readonly string[] {
  const firms = firmsIn(records, copy);
  return [
    `${count(records.jobs.length, 'job record')}, in ${count(copy.files.length + copy.shared.length, 'file')}`,
    ...copy.pictures.map(
      ({ asset, cover }) => asset.file + (cover.length === 0 ? '' : ` (${count(cover.length, 'part')} covered)`),
    ),
    ...(firms.length === 0 ? [] : [`firms named in it: ${firms.join('; ')}`]),
    ...(withoutPrices ? [] : ['prices and amounts (--without-prices keeps them)']),
    'the binder with its sheets as PDF, the data as JSON and as tables, the manual of formats, a read-me',
  ];
}

/** Suppliers support the work and stay named; a name that was taken for a person’s is among what stays. */
function firmsIn({ jobs }: Records, { hunted }: BuyersCopy): readonly string[] {
  const isHunted = (name: string): boolean => hunted.some(({ text }) => patternOf(text)?.test(name) === true);
  const names = jobs.flatMap((job) => [
    ...job.parts.flatMap(({ from }) => from ?? []),
    ...job.work.flatMap(({ to }) => to ?? []),
  ]);
  return [...new Set(names.filter((name) => name !== '?' && !isHunted(name)))].toSorted();
}
