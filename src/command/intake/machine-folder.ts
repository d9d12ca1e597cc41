// The files of a new machine folder, from what was heard: what nobody knows yet stands there as `?`.
import { scalarText } from '../../entry/flow-text.ts';
import type { SaidBesides } from './hear-all.ts';
import type { Facts } from './heard.ts';

export interface NewFolder {
  readonly name: string;
  /** Id of the planned intake. */
  readonly job: string;
  /** Texts by their path in the folder. */
  readonly files: Readonly<Record<string, string>>;
}

const features = [
  'stroke',
  'cylinders',
  'lubrication',
  'ignition',
  'magneto',
  'trigger',
  'volts',
  'battery',
  'lamps',
  'gearbox',
  'front brake',
  'rear brake',
  'final drive',
  'wheels',
] as const;

/** The currency of nothing (ISO 4217), until the owner writes their own. */
const noCurrency = 'XXX';

/** Those that this machine can have: where the spark comes from battery and coil there is no magneto to ask for. */
function featuresOf(facts: Facts): readonly string[] {
  return facts['ignition'] === 'battery and coil' && facts['magneto'] === undefined
    ? features.filter((key) => key !== 'magneto')
    : features;
}

/** A new machine folder for a day, `2026-11-14`; `besides` are words that no key says, kept in the record of the intake. */
export function newFolder(facts: Facts, today: string, besides: readonly SaidBesides[] = []): NewFolder {
  const name = nameOf(facts, today);
  const job = `${today}-intake`;
  return {
    name,
    job,
    files: { 'machine.yaml': machineText(facts, name, today), [`jobs/${job}.md`]: intakeText(facts, today, besides) },
  };
}

/** What the owner calls it, else make and model, as far as they are known. */
function nameOf(facts: Facts, today: string): string {
  if (isKnown(facts['name'])) return facts['name'];
  const known = [facts['make'], facts['model']].filter(isKnown);
  return known.length > 0 ? known.join(' ') : `Machine of ${today}`;
}

function isKnown(value: string | undefined): value is string {
  return value !== undefined && value !== '?';
}

function machineText(facts: Facts, name: string, today: string): string {
  const value = (key: string): string => scalarOr(facts[key]);
  const lines = [
    '# yaml-language-server: $schema=.schema/machine.json',
    'splitpin: 1',
    `name: ${scalarText(name)}`,
    `make: ${value('make')}`,
    `model: ${value('model')}`,
    `year: ${value('year')}`,
    'numbers:',
    `  frame: {stamped: ${stamped(facts['frame'])}}`,
    `  engine: {stamped: ${stamped(facts['engine number'])}}`,
    ...heading(
      'features:',
      featuresOf(facts).some((key) => facts[key] === undefined),
    ),
    ...featuresOf(facts).map((key) => `  ${key}: ${facts[key] ?? notKnown}`),
    ...clockLines(facts, today),
    `units: ${facts['units'] ?? 'metric'} # or ${facts['units'] === 'imperial' ? 'metric' : 'imperial'}: what blanks and torques are printed in where the book gives none`,
    `paper: ${facts['paper'] ?? 'a4'}`,
    currencyLine(facts['currency']),
  ];
  return lines.join('\n') + '\n';
}

/** In quotes: a bare `?` is read here as well, but editors that know YAML take it for the beginning of a key. */
const notKnown = '"?"';

function scalarOr(value: string | undefined): string {
  return isKnown(value) ? scalarText(value) : notKnown;
}

/** A number with the way it is known, which is the owner's to say. */
function stamped(number: string | undefined): string {
  return isKnown(number) ? `${scalarText(number)}, known by: said at the intake` : notKnown;
}

function heading(line: string, open: boolean): readonly string[] {
  return [open ? `${line} # "?" is what nobody has looked at yet: look, and write it` : line];
}

/** What the clock read on the day it came; nobody has said what it counted before. */
function clockLines(facts: Facts, today: string): readonly string[] {
  const { clock, 'clock unit': unit } = facts;
  if (!isKnown(clock) || clock === 'none' || unit === undefined) return [];
  return ['clock:', `  - {id: clock, unit: ${unit}, from: {date: ${today}, reads: ${scalarText(clock)}}}`];
}

function currencyLine(currency: string | undefined): string {
  return isKnown(currency) ? `currency: ${currency}` : `currency: ${noCurrency} # none yet: write yours, as GBP or EUR`;
}

function intakeText(facts: Facts, today: string, besides: readonly SaidBesides[]): string {
  const { clock } = facts;
  const readings = [
    'front tread',
    'rear tread',
    ...(facts['final drive'] === 'chain' || facts['final drive'] === undefined ? ['chain over 20 links'] : []),
    ...(facts['battery'] === 'no' ? [] : ['battery volts']),
  ];
  const lines = [
    '---',
    'title: Intake, as found',
    `date: ${today}`,
    'kind: intake',
    'state: planned',
    'for: what came, and in what state',
    ...(isKnown(clock) ? [`odometer: ${clock === 'none' ? 'none' : scalarText(clock)}`] : []),
    'readings:',
    ...readings.map((item) => `  - {item: ${item}}`),
    '---',
    ...besides.map(
      ({ question, words, why }) =>
        `* Said of the ${plain(question)}${why === undefined ? '' : ', and not understood'}: ${asWords(words)}`,
    ),
  ];
  return lines.join('\n') + '\n';
}

/** `engine-number` as words. */
function plain(question: string): string {
  return question === 'print-on' ? 'printing' : question.replaceAll('-', ' ');
}

/** Words in Markdown that mean nothing but themselves. */
function asWords(words: string): string {
  return words.replaceAll(/[\p{Cc}\u2028\u2029]+/gu, ' ').replaceAll(/[\\`*_{}[\]<>#|!&~]/gu, String.raw`\$&`);
}
