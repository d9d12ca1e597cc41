// The buyer's copy of a machine's records: private values left out, every other byte as it was; and what was left out, for the owner to read.
import type { CoveredArea, Records } from '../records/model.ts';
import { signedPrint } from '../records/signed-print.ts';
import type { Asset, SourceFile } from '../source/files.ts';
import { isBranch } from '../source/tree.ts';
import type { CopyChoices } from './choices.ts';
import { coverWords } from './cover-words.ts';
import { goingPictures, withoutClosedPictures } from './going-pictures.ts';
import { peopleInKeys } from './people-in-keys.ts';
import { leftOutMark, patternOf, type PrivateValue } from './private-value.ts';
import { wrongPath } from './package-paths.ts';
import { privateWordsIn } from './private-words-in.ts';
import { replaceValues } from './replace-values.ts';
import { amountPattern } from './strike-prices.ts';
import { closedPicturesOf, strikesIn, treeOf, type Strike } from './strike-record.ts';

export interface OwnersFolder {
  readonly files: readonly SourceFile[];
  readonly shared: readonly SourceFile[];
  readonly assets: readonly Asset[];
  readonly records: Records;
}

/** A thing that was left out, or a word that was covered. */
export interface LeftOut extends PrivateValue {
  /** How often it was covered in other words. */
  readonly covered: number;
}

export interface BuyersCopy {
  readonly files: readonly SourceFile[];
  /** Of the workshop above; their `file` begins with `../`. */
  readonly shared: readonly SourceFile[];
  readonly pictures: readonly { readonly asset: Asset; readonly cover: readonly CoveredArea[] }[];
  readonly leftOut: readonly LeftOut[];
  /** Files that stay whole: the workshop's own, papers, pictures. */
  readonly staying: readonly string[];
  /** What must be found nowhere in the package. */
  readonly hunted: readonly PrivateValue[];
  /** Sentences: what keeps the copy from being made. */
  readonly refused: readonly string[];
}

/** Files that are the owner's, of their workshop and of other machines in it. */
const owners = /^(?:\.\.\/)?workshop\.yaml$/u;

/** Makes the copy. Pure; nothing of the owner's is changed. */
export function buyersCopy(owner: OwnersFolder, choices: CopyChoices): BuyersCopy {
  const going = [...owner.shared, ...owner.files].filter(({ file }) => !owners.test(file));
  const closed = closedPictures(owner);
  const work = { withoutPrices: choices.withoutPrices, closedPictures: closed, handFor: numberedHands() };
  const strikes = going.map((source) => strikesIn(source, work));
  const hunted = huntedWords(owner, going, strikes.flat(), choices);
  const amounts = choices.withoutPrices ? amountPattern(currencies(owner.records)) : undefined;
  const counts = new Map<string, number>();
  const files = going.map((source, index): SourceFile => {
    const struck = replaceValues(
      source,
      (strikes[index] ?? []).map(({ at, by }) => ({ path: at.path, by })),
    );
    const without = withoutClosedPictures(struck, closed);
    const covered = coverWords(without, hunted, (value) => counts.set(value.text, (counts.get(value.text) ?? 0) + 1));
    const text = amounts === undefined || !isOwnWords(source.file) ? covered : covered.replaceAll(amounts, leftOutMark);
    return signedAgain(source, { file: source.file, text });
  });
  const pictures = goingPictures(owner, files, closed);
  const names = [...files.map(({ file }) => file), ...pictures.map(({ asset }) => asset.file)];
  return {
    files: files.filter(({ file }) => !file.startsWith('../')),
    shared: files.filter(({ file }) => file.startsWith('../')),
    pictures,
    leftOut: told(strikes.flat(), hunted, counts),
    staying: [
      ...[...owner.shared, ...owner.files].map(({ file }) => file).filter((file) => owners.test(file)),
      ...owner.assets.map(({ file }) => file).filter((file) => !pictures.some(({ asset }) => asset.file === file)),
    ],
    hunted,
    refused: names.flatMap((name) => [...privateName(name, hunted), ...unfitName(name)]),
  };
}

/** `hand 1`, `hand 2`: the same for the same name, in the order in which they are met. */
function numberedHands(): (name: string) => string {
  const known = new Map<string, string>();
  return (name) => {
    const key = name.normalize('NFC').toLowerCase();
    const hand = known.get(key) ?? `hand ${String(known.size + 1)}`;
    known.set(key, hand);
    return hand;
  };
}

function closedPictures({ files, records }: OwnersFolder): ReadonlySet<string> {
  const ofJobs = files.flatMap((source) => {
    const tree = source.file.startsWith('jobs/') ? treeOf(source) : undefined;
    return tree === undefined ? [] : closedPicturesOf(tree);
  });
  const ofNumbers = records.machine.numbers.filter((one) => one.private || one.name === 'key');
  return new Set([...ofJobs, ...ofNumbers.flatMap(({ photo }) => photo ?? [])]);
}

/** Long ones first, so that a name inside an address does not break it up. */
function huntedWords(
  owner: OwnersFolder,
  going: readonly SourceFile[],
  strikes: readonly Strike[],
  choices: CopyChoices,
): readonly PrivateValue[] {
  const mayGo = new Set(choices.mayGo.map((word) => word.toLowerCase()));
  const seen = [...peopleInKeys(owner.records), ...privateWordsIn(owner.records, going)]
    .filter(({ text }) => !mayGo.has(text.toLowerCase()))
    .flatMap(withParts);
  const struck = strikes.filter(({ hunt }) => hunt).flatMap(withParts);
  const at = { file: owner.records.machine.file, path: [] };
  const others = choices.otherMachines.map((text): PrivateValue => ({
    what: 'another machine',
    text,
    at,
    instead: 'another machine',
  }));
  const all = new Map<string, PrivateValue>();
  for (const value of [...struck, ...others, ...seen]) {
    const usable = value.text.trim().length >= 2 && patternOf(value.text) !== undefined;
    if (usable && !all.has(value.text)) all.set(value.text, value);
  }
  return [...all.values()].toSorted((a, b) => b.text.length - a.text.length);
}

/** Stands before a name and is none. */
const title = /^(?:Mrs|Miss|Herr|Frau|Monsieur|Madame|Signora?)\.?$/u;

/** A person is called by parts of their name, too. */
function withParts({ what, text, at, instead }: PrivateValue): readonly PrivateValue[] {
  const whole: PrivateValue = { what, text, at, ...(instead === undefined ? {} : { instead }) };
  if (what !== 'a name') return [whole];
  const parts = text
    .split(/\s+/u)
    .filter((part) => part !== text && /^\p{L}[\p{L}'’-]{2,}$/u.test(part) && !title.test(part));
  return [whole, ...parts.map((part) => ({ ...whole, text: part }))];
}

function currencies({ machine }: Records): readonly string[] {
  return [machine.currency, ...Object.keys(machine.rates)];
}

function isOwnWords(file: string): boolean {
  return /^jobs\/|^story\.md$/u.test(file);
}

/** A record that stood as it was signed stands as it was signed, less what is left out; one that did not, does not. */
function signedAgain(owners: SourceFile, copy: SourceFile): SourceFile {
  const tree = owners.file.startsWith('jobs/') ? treeOf(owners) : undefined;
  const signed = tree?.['signed'];
  if (copy.text === owners.text || !isBranch(signed) || signed['print'] !== signedPrint(owners.text)) return copy;
  const by = signedPrint(copy.text);
  return { file: copy.file, text: replaceValues(copy, [{ path: ['signed', 'print'], by }]) };
}

function told(
  strikes: readonly Strike[],
  hunted: readonly PrivateValue[],
  counts: ReadonlyMap<string, number>,
): readonly LeftOut[] {
  const own = strikes.map(({ what, text, at }) => ({ what, text, at, covered: counts.get(text) ?? 0 }));
  const met = new Set(strikes.map(({ text }) => text));
  const more = hunted
    .filter(({ text }) => !met.has(text) && (counts.get(text) ?? 0) > 0)
    .map(({ what, text, at }) => ({ what, text, at, covered: counts.get(text) ?? 0 }));
  return [...own, ...more];
}

function privateName(name: string, hunted: readonly PrivateValue[]): readonly string[] {
  const held = hunted.filter(({ text }) => patternOf(text, true)?.test(name.normalize('NFC')) === true);
  return held.map(({ text, what }) => `The name of the file ${name} holds ${what} (${text}): give it another name.`);
}

/** A percent sign is written as a code in the lists of a package, and then sha256sum does not find the file. */
function unfitName(name: string): readonly string[] {
  const wrong = name.includes('%') ? 'has a percent sign in it' : wrongPath(name.replace(/^\.\.\//u, ''));
  return wrong === undefined ? [] : [`The name of the file ${name} ${wrong}: give it another name.`];
}
