// The files of a new machine folder, from what was heard: what nobody knows yet stands there as `?`.
import { scalarText } from '../../entry/flow-text.ts';
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
  'trigger',
  'volts',
  'battery',
  'lamps',
  'front brake',
  'rear brake',
  'final drive',
  'wheels',
] as const;

/** The currency of nothing (ISO 4217), until the owner writes their own. */
const noCurrency = 'XXX';

/** A new machine folder for a day, `2026-11-14`. */
export function newFolder(facts: Facts, today: string): NewFolder {
  const name = nameOf(facts, today);
  const job = `${today}-intake`;
  return {
    name,
    job,
    files: { 'machine.yaml': machineText(facts, name, today), [`jobs/${job}.md`]: intakeText(facts, today) },
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
      features.some((key) => facts[key] === undefined),
    ),
    ...features.map((key) => `  ${key}: ${facts[key] ?? notKnown}`),
    ...clockLines(facts, today),
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

function intakeText(facts: Facts, today: string): string {
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
  ];
  return lines.join('\n') + '\n';
}
