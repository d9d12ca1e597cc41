// What the answers of an intake say, in the words people use for an old machine.
import { readQuantity } from '../../quantity/read-quantity.ts';
import { heard, notHeard, wordsHeard, type Heard } from './heard.ts';

function word(value: string, pattern = new RegExp(`\\b${value}\\b`, 'iu')): readonly [RegExp, string] {
  return [pattern, value];
}

/** Three capitals of ISO 4217; small letters will do when nothing else is said. */
function currencyIn(answer: string): readonly (readonly [RegExp, string])[] {
  const found = /\b[A-Z]{3}\b/u.exec(answer) ?? /^\s*[a-z]{3}\s*$|(?<=,\s*)[a-z]{3}\b/u.exec(answer);
  return found === null ? [] : [[new RegExp(`\\b${found[0].trim()}\\b`, 'u'), found[0].trim().toUpperCase()]];
}

export function clockHeard(answer: string): Heard {
  if (/^(?:none|no clock)$/iu.test(answer)) return heard({ clock: 'none' });
  const read = readQuantity(answer, 'distance ridden');
  if (read.ok) return heard({ clock: answer, 'clock unit': read.value.unit.symbol });
  const hint = read.why.hint === undefined ? '' : `; ${read.why.hint}`;
  return notHeard(`${read.why.message}${hint}.`);
}

const counts: Readonly<Record<string, string>> = { single: '1', twin: '2', triple: '3' };

/** Said of an engine, and no key of the machine's file: capacity, the way it is built, its valves. */
const ofEngines =
  /\b\d{2,4}\s*(?:cc|cm3|cm³)|\b(?:v|parallel|flat|vertical|inclined|opposed)(?=[- ](?:single|twin|triple|four)\b)|\bair[- ]cooled\b|\b(?:side|overhead)[- ]valves?\b|\boverhead[- ]cam(?:shaft)?s?\b|\b(?:ohv|ohc|sv)\b/giu;

export function engineHeard(answer: string): Heard {
  const words = [...answer.matchAll(ofEngines)].map(([one]) => one);
  const said = answer.replaceAll(ofEngines, ' ');
  const stroke = /\b(?<word>two|four)\b(?:[- ]?strokes?)?|\b(?<digit>[24])[- ]?(?:strokes?|t)\b/iu.exec(said);
  const groups = stroke?.groups ?? {};
  const kind =
    groups['word']?.toLowerCase() ??
    (groups['digit'] === undefined ? undefined : groups['digit'] === '2' ? 'two' : 'four');
  const rest = stroke === null ? said : said.replace(stroke[0], ' ');
  const many = /\b(?<name>single|twin|triple)\b|\b(?<count>1[0-2]|[1-9])\b(?:\s*cylinders?)?/iu.exec(rest);
  const count = many?.groups?.['count'] ?? counts[many?.groups?.['name']?.toLowerCase() ?? ''];
  const left = (many === null ? rest : rest.replace(many[0], ' ')).replaceAll(
    /\b(?:and|with|cylinders?|strokes?|engine)\b|[\s,;?-]/giu,
    '',
  );
  const facts = {
    ...(kind === undefined ? {} : { stroke: kind }),
    ...(count === undefined ? {} : { cylinders: count }),
  };
  if (left !== '') return notHeard(`“${left}” is not understood here.`, facts);
  return words.length === 0 ? heard(facts) : { ok: true, facts, words: words.join(', ') };
}

export function oilHeard(answer: string): Heard {
  return wordsHeard(answer, {
    groups: {
      lubrication: [
        word('premix', /\b(?:pre-?mix|petroil|in the (?:petrol|fuel|gas))\b/iu),
        word('dry sump', /\bdry[- ]sump\b/iu),
        word('wet sump', /\bwet[- ]sump\b/iu),
        word('pump', /\b(?:oil )?(?:pump|injection)\b/iu),
      ],
    },
    idle: /\bsump\b/giu,
    kept: /\boil tank\b/giu,
  });
}

export function sparkHeard(answer: string): Heard {
  return wordsHeard(answer, {
    groups: {
      magneto: [word('flywheel'), word('separate', /\b(?:separate|gear[- ]driven|chain[- ]driven)\b/iu)],
      ignition: [
        word('magneto', /\bmag(?:neto)?\b/iu),
        word('battery and coil', /\b(?:battery(?:(?: and|,| \+| &)? coils?)?|coils?)\b/iu),
      ],
      trigger: [
        word('points', /\b(?:points?|contact[- ]breakers?)\b/iu),
        word('electronic', /\b(?:electronic|transistor|cdi)\b/iu),
      ],
    },
    idle: /\b(?:ignition|type)\b/giu,
    kept: /\b(?:manual|hand|auto(?:matic)?) advance\b|\badvance lever\b|\b(?:twin|single|two|one|double) (?=(?:points|coils?)\b)/giu,
  });
}

export function electricsHeard(answer: string): Heard {
  if (/^none$/iu.test(answer)) return heard({ volts: 'none', battery: 'no', lamps: 'no' });
  return wordsHeard(answer, {
    groups: {
      volts: [word('6 V', /\b(?:6|six)[- ]?v(?:olts?)?\b/iu), word('12 V', /\b(?:12|twelve)[- ]?v(?:olts?)?\b/iu)],
      battery: [word('no', /\b(?:no|without) battery\b/iu), word('yes', /\bbattery\b/iu)],
      lamps: [
        word('no', /\b(?:no|without) (?:lamps?|lights?|lighting)\b/iu),
        word('yes', /\b(?:lamps?|lights?|lighting)\b/iu),
      ],
    },
    kept: /\b(?:dynamo|generator|alternator|regulator|rectifier|horn|direct(?= lighting)|(?:positive|negative)[- ](?:earth|ground)(?:ed)?)\b/giu,
  });
}

const ofBrakes =
  /\b(?:(?:twin|single)[- ]leading[- ]shoe|(?:full|half)[- ]width|single[- ]sided|hydraulic|cable|rod|twin(?= dis[ck]s?\b))\b/giu;

export function brakesHeard(answer: string): Heard {
  const words = [...answer.matchAll(ofBrakes)].map(([one]) => one);
  const plain = answer.replaceAll(ofBrakes, ' ');
  const said = plain.toLowerCase().match(/\b(?:drum|disc|disk)s?\b|\?/gu) ?? [];
  const left = plain.replaceAll(/\b(?:drum|disc|disk|front|rear|both|and|brake|hub)s?\b|[\s,;?:-]/giu, '');
  const twice = /\bboth\b/iu.test(plain) && said.length === 1 ? [...said, ...said] : said;
  const [front, rear] = twice.map((one) => (one.startsWith('dis') ? 'disc' : one === '?' ? '?' : 'drum'));
  const orderSaid = /\brear\b.*\bfront\b/iu.test(plain);
  if (left !== '' || front === undefined || rear === undefined || twice.length > 2 || orderSaid)
    return notHeard('Say both, the front first: drum, drum or disc, drum.');
  const facts = { 'front brake': front, 'rear brake': rear };
  return words.length === 0 ? heard(facts) : { ok: true, facts, words: answer };
}

export function driveHeard(answer: string): Heard {
  return wordsHeard(answer, {
    groups: {
      gearbox: [word('separate', /\b(?:separate|pre-?unit|not in unit)\b/iu), word('unit', /\b(?:unit|same case)\b/iu)],
      'final drive': [word('chain', /\b(?:rear )?chain\b/iu), word('shaft'), word('belt')],
      wheels: [
        word('spoked', /\b(?:wire )?spoke(?:d|s)\b|\bwire(?= wheels?\b)/iu),
        word('cast'),
        word('pressed', /\bpressed(?: steel)?\b/iu),
      ],
    },
    idle: /\b(?:gear ?box|construction|engine|wheels?|final|drive|driven|primary|rear|chain)\b/giu,
    kept: /\b(?:three|four|five|six|[3-6])[- ]speeds?\b/giu,
  });
}

export function printHeard(answer: string): Heard {
  return wordsHeard(answer, {
    groups: {
      paper: [word('half-letter', /\bhalf[- ]letter\b/iu), word('letter'), word('a4'), word('a5')],
      units: [
        word('metric', /\b(?:metric|n[·. ]?m)\b/iu),
        word('imperial', /\b(?:imperial|inch(?:es)?|(?:lbf?|ft)[·. -]?(?:ft|lbf?))\b/iu),
      ],
      currency: currencyIn(answer),
    },
    idle: /\bunits?\b/giu,
  });
}
