// The systems of a machine, and which of them a thing belongs to by its name: for leafing through a log, never for a figure.
import { plainName, remembered } from './names.ts';

/** A system with the words, in both dialects, that name its parts: the usual groups of parts lists (common practice). */
export interface System {
  readonly id: string;
  readonly name: string;
  readonly words: readonly string[];
}

function system(id: string, name: string, words: string): System {
  return { id, name, words: words.split(', ') };
}

/** The order decides where a name has words of two: the exhaust valve hangs in the exhaust, the clutch cable on the clutch. */
const known: readonly System[] = [
  system(
    'papers',
    'Papers, numbers, keys',
    'paper, log book, title, number plate, licence plate, license plate, key, insurance',
  ),
  system('exhaust', 'Exhaust', 'exhaust, silencer, muffler, baffle, tail pipe, header, expansion chamber, downpipe'),
  system(
    'fuel',
    'Fuel and air',
    'fuel, petrol, gasoline, tank, tap, petcock, carburettor, carburetor, carb, float, bowl, jet, needle,' +
      ' pilot, choke, throttle, idle, air filter, air cleaner, air box, air screw, reed, inlet, intake, ' +
      'manifold, mixture, slide, filter',
  ),
  system(
    'ignition',
    'Ignition',
    'ignition, point, condenser, capacitor, coil, plug, spark, magneto, distributor, kill switch, ' +
      'advance, contact breaker, timing',
  ),
  system(
    'electrics',
    'Electrics and lamps',
    'battery, lamp, light, bulb, headlamp, horn, fuse, wiring, loom, harness, wire, switch, rectifier, ' +
      'regulator, generator, dynamo, alternator, stator, rotor, starter, earth, ground, charging, charge, ' +
      'lead, indicator, relay',
  ),
  system(
    'gearbox',
    'Clutch, primary drive and gearbox',
    'clutch, primary, gearbox, gear, gearchange, shift, shifter, selector, kickstart, kick start, kick ' +
      'shaft, transmission, plate, layshaft, mainshaft, gearbox drain plug',
  ),
  system('final-drive', 'Final drive', 'chain, sprocket, belt, final drive, drive shaft, cush drive, bevel'),
  system(
    'brakes',
    'Brakes',
    'brake, shoe, lining, drum, caliper, calliper, pad, disc, torque arm, master cylinder, wheel cylinder',
  ),
  system('wheels', 'Wheels and tyres', 'wheel, tyre, tire, tube, rim, spoke, hub, axle, spindle, wheel bearing, tread'),
  system(
    'steering',
    'Steering and suspension',
    'fork, steering, yoke, triple tree, headstock, head race, head bearing, handlebar, bar, grip, ' +
      'stanchion, damper, shock, swing arm, swinging arm, swingarm, suspension',
  ),
  system(
    'engine',
    'Engine',
    'engine, head, barrel, cylinder, cylinder head, piston, ring, bore, crank, crankshaft, crankcase, big' +
      ' end, little end, small end, con rod, conrod, main bearing, valve, valve clearance, exhaust valve, inlet valve, tappet, cam, ' +
      'camshaft, cam chain, rocker, pushrod, compression, gasket, oil pump, sump, decompressor, gudgeon, ' +
      'port, crown, oil, oil tank, oil filter, oil line, breather, drain plug, engine drain plug',
  ),
  system(
    'frame',
    'Frame, seat and bodywork',
    'frame, seat, saddle, mudguard, fender, stand, footrest, foot peg, side panel, cover, guard, mirror, ' +
      'bracket, rack, badge, fairing, speedometer, speedo, odometer, clock, cable, strap, lever, paint',
  ),
];

const elsewhere = system('other', 'Of no one system', '');

/** All systems in their order, the one for the rest last. */
export const systems: readonly System[] = [...known, elsewhere];

const byWord: ReadonlyMap<string, System> = new Map(
  known.toReversed().flatMap((one) => one.words.map((word) => [plainName(word), one] as const)),
);

const mostWords = 3;

/**
 * The system that a thing belongs to by its name. Of words that name different systems the longer decides: a cam chain is of
 * the engine, whatever a chain is of; of words of one length the earlier system.
 */
export const systemOf: (thing: string) => System = remembered((thing) => {
  const words = plainName(thing)
    .replaceAll(/[^\p{L}\p{N} ]+/gu, ' ')
    .split(' ')
    .filter(Boolean);
  for (let length = mostWords; length > 0; length -= 1) {
    const found = new Set(runs(words, length).flatMap((run) => byWord.get(run) ?? []));
    const first = known.find((one) => found.has(one));
    if (first !== undefined) return first;
  }
  return elsewhere;
});

/** Every so many words that follow each other. */
function runs(words: readonly string[], length: number): readonly string[] {
  const starts = words.slice(0, Math.max(0, words.length - length + 1));
  return starts.map((_, at) => plainName(words.slice(at, at + length).join(' ')));
}
