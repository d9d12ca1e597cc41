// What a tyre's marking says: width, aspect, rim and nominal outside diameter, load and speed.
import { kilogram, kilometrePerHour, millimetre } from '../quantity/units.ts';
import { published } from '../table/table.ts';
import { calculation } from './calculation.ts';
import { quantity, result, words } from './input.ts';

const metricMarking = /^(\d{2,3})\/(\d{2,3})\s*(?:-|[A-Z]{1,2}|\s)\s*(\d{2}(?:\.\d)?)/i;
const inchMarking = /^(\d\.\d{1,2})(?:\/(\d{2,3}))?\s*(?:-|x|×|[A-Z]|\s)\s*(\d{2})/i;
const serviceMarking = /(\d{2})([A-Z])\b(?!.*\d{2}[A-Z]\b)/;

/**
 * Nominal outside diameter in mm. Metric: 25.4 · rim + 2 · width · aspect. Inch sizes stand 100 % of their width high; low ones
 * (3.60, 4.10, 4.60, 4.25/85 …) are marked with their aspect or end in 10 or 60 and stand 90 %. Undefined for another form.
 * @example tyreDiameter('120/90-18') // 673.2
 */
export function tyreDiameter(marking: string): number | undefined {
  const size = tyreSize(marking);
  return size === undefined ? undefined : size.rim * 25.4 + 2 * size.width * size.aspect;
}

/** Width in mm, aspect as a part of one, rim in inches. */
export function tyreSize(
  marking: string,
): { readonly width: number; readonly aspect: number; readonly rim: number } | undefined {
  const text = marking.trim();
  const metric = metricMarking.exec(text);
  if (metric !== null) return { width: Number(metric[1]), aspect: Number(metric[2]) / 100, rim: Number(metric[3]) };
  const inch = inchMarking.exec(text);
  if (inch === null) return undefined;
  const low = /^\d\.(?:10|60|85)$/.test(inch[1] ?? '') && !(inch[1] ?? '').startsWith('2.');
  const aspect = inch[2] === undefined ? (low ? 0.9 : 1) : Number(inch[2]) / 100;
  return { width: Number(inch[1]) * 25.4, aspect, rim: Number(inch[3]) };
}

export const tyreMarking = calculation({
  id: 'tyre-marking',
  name: 'What the tyre’s marking says',
  purpose: 'Outside diameter, load and speed that the marking stands for, against the load on the axle.',
  formula: 'D = 25.4 · rim + 2 · w · aspect',
  inputs: {
    marking: words('', 'marking'),
    'axle load': quantity('', 'load on this wheel', kilogram, { optional: true, above: 0 }),
  },
  outputs: {
    diameter: result('D', 'nominal outside diameter', millimetre, 1),
    load: result('', 'load by its index', kilogram, 0),
    speed: result('', 'speed by its symbol', kilometrePerHour, 0),
    spare: result('', 'load left over', kilogram, 0),
  },
  range:
    'A real tyre lies within 2 % of the nominal diameter. A marking without index or symbol says nothing of load and speed.',
  source: 'ETRTO load index and speed symbols; nominal sizes by a maker’s chart.',
  tables: ['load-index', 'speed-symbol', 'values-tyres'],
  cautions: ['old-tyre'],
  example: {
    given: { marking: '120/90-18 65H', 'axle load': '190 kg' },
    gives: { diameter: '673.2 mm', load: '290 kg', speed: '210 km/h', spare: '100 kg' },
  },
  work: (given) => {
    const marking = given.words('marking');
    const diameter = tyreDiameter(marking);
    if (diameter === undefined) {
      given.doubt('calculation-value-wrong', '“' + marking + '” is not a tyre marking read here');
      return {};
    }
    const rest = marking.replace(metricMarking, '').replace(inchMarking, '');
    const service = serviceMarking.exec(rest);
    const load = service === null ? undefined : published('load-index', service[1] ?? '', 'load', kilogram);
    const speed = service === null ? undefined : published('speed-symbol', service[2] ?? '', 'speed', kilometrePerHour);
    if (load !== undefined) given.use('', 'load index ' + (service?.[1] ?? ''), load);
    const axle = given.maybe('axle load', kilogram);
    const spare = load === undefined || axle === undefined ? undefined : load.quantity - axle;
    if (spare !== undefined && spare < 0)
      given.doubt('calculation-unlikely', 'the tyre is marked for less than the load on this wheel');
    return { diameter, load: load?.quantity, speed: speed === undefined ? undefined : speed.quantity * 3.6, spare };
  },
});
