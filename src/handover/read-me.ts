// The read-me of a package: plain text for whoever finds it, now or in twenty years, without this program.
import type { Book } from '../book/book.ts';
import { fingerprintText } from '../records/fingerprint.ts';
import {
  binderFolder,
  fingerprintFile,
  formatsFolder,
  manifestFile,
  recordsFolder,
  tablesFolder,
  tagManifestFile,
} from './package-layout.ts';

export interface ReadMeWork {
  readonly book: Book;
  readonly machineFolder: string;
  readonly program: string;
  readonly withoutPrices: boolean;
}

const width = 76;

/** The text, no line longer than a letter's. */
export function readMeText({ book, machineFolder, program, withoutPrices }: ReadMeWork): string {
  const { machine, jobs } = book.records;
  const records = `${recordsFolder}/${machineFolder}`;
  const parts: readonly (readonly string[])[] = [
    [`${machine.name}: the history that goes with it`, `Made on ${book.today} by Splitpin ${program}.`],
    [
      'TO READ IT',
      `Open ${binderFolder}/index.html in any browser. Nothing has to be installed, and nothing is fetched from anywhere.`,
      `For paper: ${binderFolder}/print/history.pdf is the whole history. The other sheets lie beside it; handover.pdf and known-faults.pdf are filled in and signed by both.`,
    ],
    [
      'WHAT IS IN IT',
      `  ${binderFolder}/: the binder: pages to read, sheets to print; data/binder.json holds the data, binder.schema.json says what each key means.`,
      `  ${records}/: the records themselves, ${String(jobs.length)} jobs, plain text with photographs. Any editor opens them; Splitpin goes on with them.`,
      `  ${tablesFolder}/: the same as tables (CSV) for a spreadsheet. A cell that it would take for a formula has a ' before it.`,
      `  ${formatsFolder}/: how the records are written, by example.`,
    ],
    [
      'WHAT IS NOT IN IT',
      'Names, addresses, telephone numbers, e-mail, signatures, key numbers, papers, private photographs, what a camera writes into a photograph, the workshop and other machines. In the records "(left out)" stands where such a word stood, "?" where such a value stood, "hand 1" for a person. Nothing else was changed.',
      ...(withoutPrices ? ['Prices and amounts were left out too.'] : []),
      'The number of the key goes from hand to hand, on paper.',
    ],
    [
      'IS IT WHOLE?',
      `With Splitpin: splitpin verify <this folder or the ZIP>. Without it, in this folder: sha256sum -c ${manifestFile} ${tagManifestFile}. Both name every file that was changed or is missing. The form is BagIt, RFC 8493.`,
    ],
    [
      'FINGERPRINT OF THE RECORDS',
      ...(book.fingerprint === undefined ? [] : (fingerprintText(book.fingerprint).match(/.{1,35}(?: |$)/gu) ?? [])),
      `It is the SHA-256 of ${records}/${fingerprintFile}, which lists the SHA-256 of every record, and it is printed on the history. Paper and package with the same fingerprint have the same record texts, letter by letter. It does not show that what they tell is true, nor who wrote it, nor when; and photographs are not in it (they are in ${manifestFile}).`,
    ],
    [
      'BEFORE THE FIRST RIDE',
      'Nothing here says that the machine is fit to ride: it says what is on record and what is not. The maker’s manual, local rules and licensed practice come first. Read the known faults, and what is due; let the controls, fuel and oil, the stand, how it kicks back and what the brakes can do be shown to you.',
    ],
  ];
  return parts.map((part) => part.map(wrapped).join('\n')).join('\n\n') + '\n';
}

/** Wrapped between words; what begins set in goes on further in. */
function wrapped(text: string): string {
  const indent = text.startsWith('  ') ? '      ' : '';
  const lines: string[] = [];
  let line = text.startsWith('  ') ? '  ' : '';
  for (const word of text.trim().split(/ +/u)) {
    if (line.trim() !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else line = line.trim() === '' ? line + word : `${line} ${word}`;
  }
  return [...lines, line].join('\n');
}
