// The workload: records of about 2 KB with 12 fields, 5 readings, 3 parts and 200 words; the same N gives the same bytes.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export interface BenchRecord {
  readonly id: string;
  readonly title: string;
  readonly date: string;
  readonly kind: string;
  readonly fields: Readonly<Record<string, string>>;
  readonly readings: readonly { readonly item: string; readonly found: string; readonly left: string }[];
  readonly parts: readonly { readonly part: string; readonly number: string; readonly price: string }[];
  readonly body: string;
  /** A photo below the machine folder. */
  readonly photo?: string;
}

const kinds = ['cleaning', 'strip', 'measuring', 'machining', 'repair', 'assembly', 'setting up', 'service'] as const;
const things = [
  'head',
  'barrel',
  'piston',
  'ring',
  'carburettor',
  'float',
  'needle',
  'clutch',
  'plate',
  'spring',
  'chain',
  'sprocket',
  'wheel',
  'spoke',
  'brake',
  'lining',
  'cable',
  'lever',
  'fork',
  'bush',
  'seal',
  'bearing',
  'gear',
  'shaft',
  'points',
  'coil',
  'plug',
  'lead',
  'lamp',
  'switch',
  'tank',
  'tap',
  'filter',
  'gasket',
  'stud',
  'nut',
];
const doings = [
  'cleaned',
  'measured',
  'lifted',
  'turned',
  'pressed',
  'oiled',
  'set',
  'checked',
  'drawn',
  'filed',
  'lapped',
  'soaked',
  'scraped',
  'heated',
  'cooled',
  'drilled',
  'tapped',
  'polished',
  'packed',
  'bagged',
];
const rest = [
  'the',
  'a',
  'with',
  'under',
  'over',
  'before',
  'after',
  'by',
  'hand',
  'slowly',
  'again',
  'left',
  'right',
  'cold',
  'warm',
  'dry',
  'clean',
  'worn',
  'new',
  'old',
  'and',
  'then',
  'still',
  'at',
  'last',
  'once',
  'more',
  'from',
  'inside',
  'outside',
];
const items = ['big end play', 'ring gap', 'chain slack', 'spoke tension', 'fork travel'] as const;

/** Numbers that look thrown, the same each time. */
function thrower(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 4_294_967_296) * below);
  };
}

/** The records, oldest first, over four years. */
export function records(count: number): readonly BenchRecord[] {
  const start = Date.UTC(2020, 0, 1);
  return Array.from({ length: count }, (_, index) => {
    const throwOf = thrower(index + 1);
    const pick = (words: readonly string[]): string => words[throwOf(words.length)] ?? '';
    const date = new Date(start + Math.floor((index * 1460) / count) * 86_400_000).toISOString().slice(0, 10);
    const kind = kinds[index % kinds.length] ?? 'repair';
    const number = String(index + 1).padStart(5, '0');
    return {
      id: `${date}-${number}`,
      title: `${pick(things)} ${pick(doings)} and ${pick(things)} ${pick(doings)} ${number}`,
      date,
      kind,
      fields: {
        state: 'done',
        for: `${pick(things)} ${pick(rest)} ${pick(things)}`,
        hands: '[owner, helper]',
        odometer: String(1000 + Math.floor((index * 20_000) / count)) + ' mi',
        time: `${String(1 + throwOf(5))} h ${String(5 * throwOf(12)).padStart(2, '0')} min`,
        'heat cycles': '0',
        'state left': `[${pick(things)} ${pick(doings)}]`,
        next: `${pick(doings)} the ${pick(things)}`,
        signed: `{by: owner, date: ${date}}`,
      },
      readings: items.map((item) => ({
        item,
        found: hundredths(20 + throwOf(60)),
        left: hundredths(10 + throwOf(40)),
      })),
      parts: Array.from({ length: 3 }, () => ({
        part: `${pick(things)} ${pick(things)}`,
        number: `${String(100 + throwOf(900))}-${String(10_000 + throwOf(90_000))}`,
        price: String(1 + throwOf(90)) + '.' + String(10 + throwOf(90)) + ' GBP',
      })),
      body: bodyOf(pick, throwOf),
    };
  });
}

function hundredths(number: number): string {
  return '0.' + String(number).padStart(2, '0') + ' mm';
}

function bodyOf(pick: (words: readonly string[]) => string, throwOf: (below: number) => number): string {
  const sentence = (): string => {
    const words = Array.from({ length: 10 }, (_, index) =>
      pick([rest, things, doings][(index + throwOf(2)) % 3] ?? rest),
    );
    const [first = '', ...others] = words;
    return first.charAt(0).toUpperCase() + first.slice(1) + ' ' + others.join(' ') + '.';
  };
  const paragraph = (): string => Array.from({ length: 5 }, sentence).join(' ');
  return [paragraph(), paragraph(), '## Afterwards', paragraph(), paragraph()].join('\n\n') + '\n';
}

/** A record as one of our files. */
export function asRecord(record: BenchRecord): string {
  const fields = Object.entries(record.fields).map(([key, value]) => `${key}: ${value}`);
  const readings = record.readings.map(
    ({ item, found, left }) => `  - {item: ${item}, found: ${found}, left: ${left}}`,
  );
  const parts = record.parts.map(
    ({ part, number, price }) =>
      `  - {part: ${part}, number: ${number}, class: pattern, price: ${price}, state: fitted}`,
  );
  return [
    '---',
    `title: ${record.title}`,
    `date: ${record.date}`,
    `kind: ${record.kind}`,
    ...fields,
    'readings:',
    ...readings,
    'parts:',
    ...parts,
    ...(record.photo === undefined ? [] : ['photos:', `  - {file: ${record.photo}, caption: ${record.title}}`]),
    '---',
    '',
    record.body,
  ].join('\n');
}

const machine = `splitpin: 1
name: Bench machine
make: Bench
model: One
numbers:
  frame: {stamped: B-000001, known by: invented}
features:
  stroke: two
  cylinders: 1
  lubrication: premix
  ignition: magneto
  trigger: points
  volts: 6 V
  battery: no
  lamps: yes
  front brake: drum
  rear brake: drum
  final drive: chain
  wheels: spoked
geometry:
  bore: 50 mm
  stroke: 50 mm
clock:
  - {id: clock, unit: mi, digits: 5, from: {date: 2019-12-01, reads: 900 mi}, state: working}
units: metric
spelling: uk
paper: a4
currency: GBP
`;

/** The records with photos shared out evenly among them. */
export function withPhotos(all: readonly BenchRecord[], photos: readonly string[]): readonly BenchRecord[] {
  const shown = new Map(photos.map((photo, index) => [Math.floor((index * all.length) / photos.length), photo]));
  return all.map((record, index) => {
    const photo = shown.get(index);
    return photo === undefined ? record : { ...record, photo };
  });
}

/** Writes a machine folder of our own. */
export function writeMachine(folder: string, all: readonly BenchRecord[]): void {
  rmSync(join(folder, 'jobs'), { recursive: true, force: true });
  mkdirSync(join(folder, 'jobs'), { recursive: true });
  writeFileSync(join(folder, 'machine.yaml'), machine);
  for (const record of all) writeFileSync(join(folder, 'jobs', `${record.id}.md`), asRecord(record));
}
