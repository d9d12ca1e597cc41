// Pattern cards of the trade: what was seen on which machine, which causes must lead, and which test must be among the first three.
import { diagnose, type Diagnosis } from '../../src/book/faults/diagnosis.ts';
import { nameOutcome, type NamedOutcome } from '../../src/book/faults/fault-names.ts';
import { evening, machineFile } from '../evenings/evening.ts';

export interface Card {
  readonly name: string;
  readonly features: Readonly<Record<string, string>>;
  readonly ran: 'long stored' | 'lately running';
  readonly saw: readonly string[];
  /** Ids of causes that must be among the first three of their group. */
  readonly causes: readonly string[];
  /** At least one of these must be among the first three tests. */
  readonly next: readonly string[];
  /** None of these may be among the first three: dear, or a guess. */
  readonly not?: readonly string[];
}

export const twoStroke = {
  stroke: 'two',
  lubrication: 'premix',
  ignition: 'magneto',
  trigger: 'points',
  battery: 'no',
};
export const twoElectronic = { ...twoStroke, trigger: 'electronic' };
export const twoBattery = { ...twoStroke, ignition: 'battery and coil', battery: 'yes', volts: '6 V' };
export const fourStroke = { ...twoStroke, stroke: 'four', lubrication: 'wet sump' };
export const fourBattery = { ...fourStroke, ignition: 'battery and coil', battery: 'yes', volts: '6 V' };
export const fourElectronic = { ...fourStroke, trigger: 'electronic', battery: 'yes', volts: '12 V' };

/** A record by which a person lets the hold points pass, so that every test can be offered. */
const released = ['before-turning', 'before-live-kick', 'before-moving']
  .map((of) => `  - {of: ${of}, by: owner, why: for the test, until: 2027-11-01}`)
  .join('\n');

/** A machine with the features of a card, and nothing on record but the releases, if those. */
export function machineFor(features: Card['features'], held = false) {
  const jobs = held ? {} : { '2026-11-01-let-pass': `kind: waking\nreleases:\n${released}` };
  return evening('2026-11-14', jobs, { machine: machineFile({}, features) }).book;
}

/** Observations by name, for a machine; throws with the nearest names when one is not known. */
export function named(book: ReturnType<typeof machineFor>, saw: readonly string[]): readonly NamedOutcome[] {
  const { tests } = diagnose(book).faults;
  return saw.map((ref) => {
    const [test = '', outcome = ''] = ref.split('=');
    const naming = nameOutcome(tests, test, outcome);
    if (!naming.ok) throw new Error(`${ref}: ${naming.message} ${naming.near.join(', ')}`);
    return naming.value;
  });
}

/** What is found with the observations of a card, the free looks taken as done and silent. */
export function found(card: Card): Diagnosis {
  const book = machineFor(card.features);
  return diagnose(book, { saw: named(book, card.saw), looked: true, standing: card.ran });
}
