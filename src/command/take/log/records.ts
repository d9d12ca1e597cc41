// Entries of a log as job records: one a row or one a day, each with the print of what it was made from, so that it is known again.
import { createHash } from 'node:crypto';
import { flowText, scalarText } from '../../../entry/flow-text.ts';
import type { LogEntry } from './entries.ts';

export interface LogRecord {
  /** `jobs/2019-05-04-oil-changed.md` */
  readonly file: string;
  readonly text: string;
  readonly entries: readonly LogEntry[];
}

export interface RecordManner {
  readonly per: 'row' | 'day';
  readonly kind: string;
  /** Name of the file that was taken, for whoever reads the record. */
  readonly from: string;
  /** Files that are there already: a record never gets one of their names. */
  readonly taken: ReadonlySet<string>;
}

/** Seven characters over a row as it was written, whatever file it came from and however it was read. */
export function entryPrint({ cells }: LogEntry): string {
  const bytes = createHash('sha256').update(JSON.stringify(cells)).digest();
  return bytes.readUIntBE(0, 6).toString(36).padStart(7, '0').slice(-7);
}

/** Prints of entries that records hold already. */
export function printsIn(texts: readonly string[]): ReadonlySet<string> {
  return new Set(
    texts.flatMap((text) =>
      [...text.matchAll(/^Taken from .*, print (?<print>[0-9a-z]{7})\.$/gmu)].map(
        (found) => found.groups?.['print'] ?? '',
      ),
    ),
  );
}

/** The records, in the order of their days. */
export function recordsOf(entries: readonly LogEntry[], manner: RecordManner): readonly LogRecord[] {
  const sorted = entries.toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.line - b.line));
  const groups: LogEntry[][] = [];
  for (const entry of sorted) {
    const last = groups.at(-1);
    if (manner.per === 'day' && last?.[0]?.day === entry.day) last.push(entry);
    else groups.push([entry]);
  }
  const used = new Set(manner.taken);
  return groups.map((group) => {
    const file = freeName(group, used);
    used.add(file);
    return { file, text: recordText(group, manner), entries: group };
  });
}

function freeName(group: readonly LogEntry[], used: ReadonlySet<string>): string {
  const words = titleOf(group)
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/\p{M}/gu, '')
    .match(/[\p{L}\p{N}]+/gu);
  const name = [group[0]?.day ?? '', ...(words ?? ['log']).slice(0, 5)].join('-').slice(0, 80);
  for (let number = 1; ; number += 1) {
    const file = `jobs/${name}${number === 1 ? '' : `-${String(number)}`}.md`;
    if (!used.has(file)) return file;
  }
}

/** The first words of the first entry, cut where a word ends. */
function titleOf(group: readonly LogEntry[]): string {
  const words = group[0]?.text.split(/[\r\n]/u)[0]?.trim() ?? '';
  if (words === '') return 'From the old log';
  if (words.length <= 60) return words;
  const cut = words.slice(0, 60).replace(/\s+\S*$/u, '');
  return `${cut} …`;
}

function recordText(group: readonly LogEntry[], manner: RecordManner): string {
  const odometers = group.flatMap((entry) => entry.odometer ?? []);
  const last = odometers.toSorted((a, b) => Number.parseFloat(a) - Number.parseFloat(b)).at(-1);
  const paid = group.flatMap((entry) => (entry.cost === undefined ? [] : [moneyLine(entry, entry.cost)]));
  const head = [
    '---',
    `title: ${scalarText(titleOf(group))}`,
    `date: ${group[0]?.day ?? ''}`,
    `kind: ${manner.kind}`,
    'state: done',
    ...(last === undefined ? [] : [`odometer: ${last}`]),
    ...(paid.length === 0 ? [] : ['money:', ...paid]),
    '---',
  ];
  return head.join('\n') + '\n' + group.map((entry) => bodyOf(entry, last, manner.from)).join('\n');
}

function moneyLine(entry: LogEntry, cost: string): string {
  const back = cost.startsWith('-');
  const line = { [back ? 'refund' : 'paid']: cost.replace(/^-/u, ''), for: titleOf([entry]) };
  return `  - ${flowText(line)}`;
}

function bodyOf(entry: LogEntry, odometer: string | undefined, from: string): string {
  const other = entry.odometer === undefined || entry.odometer === odometer ? [] : [`odometer: ${entry.odometer}`];
  const beside = [...other, ...entry.beside].map((line) => `- ${asWords(line)}`);
  const origin = `Taken from ${asWords(from)}, line ${String(entry.line)}, print ${entryPrint(entry)}.`;
  return [asWords(entry.text), beside.join('\n'), origin].filter((part) => part !== '').join('\n\n') + '\n';
}

/** Words of somebody else’s as Markdown that says the same words: nothing in them is a heading, a link, a picture or a rule. */
function asWords(text: string): string {
  return text
    .replaceAll(/\r\n?/gu, '\n')
    .replaceAll(/\p{Cc}/gu, (character) => (character === '\n' ? '\n' : ' '))
    .split('\n')
    .map((line) =>
      line
        .trim()
        .replaceAll(/[\\`*_{}[\]<>|~&!]/gu, '\\$&')
        .replace(/^(?<sign>[#+=-])/u, '\\$<sign>')
        .replace(/^(?<digits>\d+)(?<sign>[.)])/u, '$<digits>\\$<sign>'),
    )
    .join('\n')
    .trim();
}
