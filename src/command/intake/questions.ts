// The questions of an intake: what must be known before a machine has a binder. Each may be left for later.
import { readQuantity } from '../../quantity/read-quantity.ts';
import { heard, notHeard, wordsHeard, type Heard } from './heard.ts';

export interface Question {
  /** Name of the option, and key in a file of answers. */
  readonly id: string;
  readonly asks: string;
  /** What an answer looks like. */
  readonly example: string;
  readonly hear: (answer: string) => Heard;
}

/** Any words; they are kept as they are written. */
function words(key: string): Question['hear'] {
  return (answer) =>
    answer.length > 200 ? notHeard('This is too long: write at most 200 characters.') : heard({ [key]: answer });
}

export const questions: readonly Question[] = [
  { id: 'make', asks: 'Make', example: 'Larkmoor', hear: words('make') },
  { id: 'model', asks: 'Model', example: 'Pipit 175', hear: words('model') },
  { id: 'year', asks: 'Year of making', example: '1969', hear: words('year') },
  { id: 'frame', asks: 'Frame number, as stamped', example: 'LP175-04417', hear: words('frame') },
  { id: 'engine-number', asks: 'Engine number, as stamped', example: 'LE175-04390', hear: words('engine number') },
  { id: 'clock', asks: 'What its clock reads now, with the unit, or none', example: '7512 mi', hear: clockHeard },
  {
    id: 'engine',
    asks: 'Engine: two or four strokes, how many cylinders',
    example: 'two, 2 cylinders',
    hear: engineHeard,
  },
  { id: 'oil', asks: 'Engine oil: premix, pump, wet sump or dry sump', example: 'premix', hear: oilHeard },
  {
    id: 'spark',
    asks: 'Spark: magneto, or battery and coil; points or electronic',
    example: 'magneto, points',
    hear: sparkHeard,
  },
  {
    id: 'electrics',
    asks: 'Electrics: volts, battery, lamps; or none',
    example: '6 V, battery, lamps',
    hear: electricsHeard,
  },
  { id: 'brakes', asks: 'Brakes, front then rear: drum or disc', example: 'drum, drum', hear: brakesHeard },
  {
    id: 'drive',
    asks: 'Final drive: chain, shaft or belt; wheels: spoked, cast or pressed',
    example: 'chain, spoked',
    hear: (answer) =>
      wordsHeard(answer, {
        'final drive': [word('chain'), word('shaft'), word('belt')],
        wheels: [word('spoked', /\bspoke(?:d|s)\b/iu), word('cast'), word('pressed')],
      }),
  },
  {
    id: 'print-on',
    asks: 'Paper (a4, letter, a5, half-letter), and the currency you pay in',
    example: 'a4, GBP',
    hear: (answer) =>
      wordsHeard(answer, {
        paper: [word('half-letter'), word('letter'), word('a4'), word('a5')],
        currency: currencyIn(answer),
      }),
  },
];

function word(value: string, pattern = new RegExp(`\\b${value}\\b`, 'iu')): readonly [RegExp, string] {
  return [pattern, value];
}

/** Three capitals of ISO 4217; small letters will do when nothing else is said. */
function currencyIn(answer: string): readonly (readonly [RegExp, string])[] {
  const found = /\b[A-Z]{3}\b/u.exec(answer) ?? /^\s*[a-z]{3}\s*$|(?<=,\s*)[a-z]{3}\b/u.exec(answer);
  return found === null ? [] : [[new RegExp(`\\b${found[0].trim()}\\b`, 'u'), found[0].trim().toUpperCase()]];
}

function clockHeard(answer: string): Heard {
  if (/^(?:none|no clock)$/iu.test(answer)) return heard({ clock: 'none' });
  const read = readQuantity(answer, 'distance ridden');
  if (read.ok) return heard({ clock: answer, 'clock unit': read.value.unit.symbol });
  const hint = read.why.hint === undefined ? '' : `; ${read.why.hint}`;
  return notHeard(`${read.why.message}${hint}.`);
}

const counts: Readonly<Record<string, string>> = { single: '1', twin: '2', triple: '3' };

function engineHeard(answer: string): Heard {
  const stroke = /\b(?<word>two|four)\b(?:[- ]?strokes?)?|\b(?<digit>[24])[- ]?(?:strokes?|t)\b/iu.exec(answer);
  const groups = stroke?.groups ?? {};
  const kind =
    groups['word']?.toLowerCase() ??
    (groups['digit'] === undefined ? undefined : groups['digit'] === '2' ? 'two' : 'four');
  const rest = stroke === null ? answer : answer.replace(stroke[0], ' ');
  const many = /\b(?<name>single|twin|triple)\b|\b(?<count>1[0-2]|[1-9])\b(?:\s*cylinders?)?/iu.exec(rest);
  const count = many?.groups?.['count'] ?? counts[many?.groups?.['name']?.toLowerCase() ?? ''];
  const left = (many === null ? rest : rest.replace(many[0], ' ')).replaceAll(
    /\b(?:and|with|cylinders?|strokes?)\b|[\s,;?-]/giu,
    '',
  );
  if (left !== '') return notHeard(`“${left}” is not understood here.`);
  return heard({
    ...(kind === undefined ? {} : { stroke: kind }),
    ...(count === undefined ? {} : { cylinders: count }),
  });
}

function oilHeard(answer: string): Heard {
  return wordsHeard(answer, {
    lubrication: [
      word('premix', /\bpre-?mix\b/iu),
      word('pump', /\b(?:oil )?pump\b/iu),
      word('wet sump'),
      word('dry sump'),
    ],
  });
}

function sparkHeard(answer: string): Heard {
  return wordsHeard(answer, {
    ignition: [word('magneto', /\bmag(?:neto)?\b/iu), word('battery and coil', /\b(?:battery(?: and coil)?|coil)\b/iu)],
    trigger: [word('points', /\bpoints?\b/iu), word('electronic')],
  });
}

function electricsHeard(answer: string): Heard {
  if (/^none$/iu.test(answer)) return heard({ volts: 'none', battery: 'no', lamps: 'no' });
  return wordsHeard(answer, {
    volts: [word('6 V', /\b6\s*v(?:olts?)?\b/iu), word('12 V', /\b12\s*v(?:olts?)?\b/iu)],
    battery: [word('no', /\bno battery\b/iu), word('yes', /\bbattery\b/iu)],
    lamps: [word('no', /\bno (?:lamps?|lights?)\b/iu), word('yes', /\b(?:lamps?|lights?)\b/iu)],
  });
}

function brakesHeard(answer: string): Heard {
  const said = answer.toLowerCase().match(/\b(?:drum|disc|disk)s?\b|\?/gu) ?? [];
  const left = answer.replaceAll(/\b(?:drum|disc|disk|front|rear|both|and)s?\b|[\s,;?:-]/giu, '');
  const twice = /\bboth\b/iu.test(answer) && said.length === 1 ? [...said, ...said] : said;
  const [front, rear] = twice.map((one) => (one.startsWith('dis') ? 'disc' : one === '?' ? '?' : 'drum'));
  const orderSaid = /\brear\b.*\bfront\b/iu.test(answer);
  if (left !== '' || front === undefined || rear === undefined || twice.length > 2 || orderSaid)
    return notHeard('Say both, the front first: drum, drum or disc, drum.');
  return heard({ 'front brake': front, 'rear brake': rear });
}
