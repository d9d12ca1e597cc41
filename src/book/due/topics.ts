// What a line of a schedule speaks of, in the words of the trade: so that a general line is left out only where the maker speaks of it all.
import type { Features, ServiceLine } from '../../records/model.ts';

/** Things that are served, by the words that name them in an item or an id. */
const topics: Readonly<Record<string, RegExp>> = {
  'brake fluid': /\bbrake fluid/iu,
  'brake hose': /\bbrake hoses?\b/iu,
  hoses: /(?<!\bbrake )\bhoses?\b/iu,
  brakes: /\b(?:brakes?|linings?|shoes|pads)\b(?! (?:fluid|hose))/iu,
  tyres: /\b(?:tyres?|tires?)\b/iu,
  'gearbox oil': /\bgear ?box\b/iu,
  'engine oil': /\bengine oil\b/iu,
  'fork oil': /\bforks?\b/iu,
  'oil pump': /\boil pump\b/iu,
  plugs: /\b(?:spark(?:ing)? )?plugs?\b/iu,
  'air filter': /\bair (?:filter|cleaner)\b/iu,
  'contact breaker': /\b(?:points|contact breaker)\b/iu,
  ignition: /\b(?:points|timing|contact breaker|magneto)\b/iu,
  decoke: /\b(?:decoke|decarboni[sz]e|ports)\b/iu,
  'head nuts': /\bhead nuts\b/iu,
  reeds: /\breeds?\b/iu,
  carburettor: /\b(?:carburett?ors?|idle)\b/iu,
  tap: /\btap\b/iu,
  clutch: /\bclutch\b/iu,
  'cam chain': /\bcam chain\b/iu,
  chain: /(?<!\bcam )\bchain\b/iu,
  spokes: /\bspokes?\b/iu,
  'wheel bearings': /\bwheel bearings?\b/iu,
  steering: /\b(?:head bearings?|steering)\b/iu,
  pivots: /\b(?:swinging arm|pivots?)\b/iu,
  battery: /\bbattery\b/iu,
  'top end': /\b(?:piston|rings|compression)\b/iu,
  seals: /\b(?:crank )?seals\b/iu,
  tappets: /\b(?:tappets?|valve clearances?)\b/iu,
  'nuts and bolts': /\bnuts(?: and|,) bolts\b/iu,
  'whole list': /\b(?:whole list|in a year that had none|yearly (?:look|check))\b/iu,
};

/** Kept with the line: what it speaks of does not change with a record. */
const known = new WeakMap<ServiceLine, readonly string[]>();

/** Topics of a line; none where no word of it is known here. */
export function topicsOf(line: ServiceLine): readonly string[] {
  const before = known.get(line);
  if (before !== undefined) return before;
  const found = topicsIn(line);
  known.set(line, found);
  return found;
}

function topicsIn(line: ServiceLine): readonly string[] {
  const text = `${line.item} ${line.id.replaceAll('-', ' ')}`;
  return Object.entries(topics).flatMap(([topic, named]) => (named.test(text) ? [topic] : []));
}

/** What a machine of these features has not got, or need not have served, of the topics that a general line may speak of. */
export function notOnIt(features: Features): ReadonlySet<string> {
  const { lubrication, battery, frontBrake, rearBrake, finalDrive, trigger, wheels } = features;
  const maybe = (...names: readonly string[]): boolean => names.some((name) => features.notKnown?.includes(name));
  const discs = frontBrake === 'disc' || rearBrake === 'disc' || maybe('frontBrake', 'rearBrake');
  return new Set([
    ...(lubrication === 'pump' || maybe('lubrication') ? [] : ['oil pump']),
    ...(battery ? [] : ['battery']),
    ...(discs ? [] : ['brake fluid', 'brake hose']),
    ...(trigger === 'points' || maybe('trigger') ? [] : ['contact breaker', 'ignition']),
    ...(wheels === 'spoked' || maybe('wheels') ? [] : ['spokes']),
    ...(finalDrive === 'chain' ? [] : ['chain']),
  ]);
}
