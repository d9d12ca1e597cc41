// What the machine is: its numbers as stamped and how each is known, what it has, and what is not known yet.
import type { Book } from '../book/book.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import type { Features, StampedNumber } from '../records/model.ts';
import { column, fact, heading, lines, paragraphs, row, stack } from './wording/blocks.ts';
import type { Fact } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { dayText, looseDateText } from './wording/day.ts';
import { writtenText } from './wording/value.ts';
import { headFigures } from './figures/engine.ts';
import { odometerStatement } from './wording/distance.ts';
import { featureText } from './wording/feature.ts';
import { inlineFigure } from './wording/figure.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const machineHead = defineView({
  id: 'machine-head',
  purpose: 'The numbers as stamped, what the machine has, and what is not known.',
  needs: 'machine',
  options: [],
  blocks: (context) =>
    stack(
      heading(2, context.say('What it is'), 'what-it-is'),
      { type: 'facts', across: 2, facts: identity(context) },
      paragraphs(odometerStatement(context)),
      numbers(context),
      heading(2, context.say('What it has'), 'what-it-has'),
      { type: 'facts', across: 2, facts: features(context) },
      notKnown(context),
    ),
});

function identity({ book, say }: ViewContext): readonly Fact[] {
  const { machine } = book.records;
  const { now, statement } = book.odometer;
  return [
    ...fact(say('Make'), machine.make),
    ...fact(say('Model'), machine.model),
    ...fact(say('Year'), machine.year),
    ...fact(say('First used'), machine.firstUse === undefined ? undefined : looseDateText(machine.firstUse)),
    ...fact(say('On the clock'), now.clock === undefined ? undefined : [inlineFigure(now.clock)]),
    ...fact(
      say('Distance of the machine'),
      now.machine === undefined ? say('not known') : [inlineFigure(now.machine, 'distance-now')],
      // A sum of what its clocks counted is not yet what it was ridden.
      now.machine !== undefined && statement.word === 'not actual' ? say('not actual, as said below') : undefined,
    ),
    ...fact(say('Last reading'), now.job === undefined ? undefined : dayText(now.day)),
  ];
}

function isKnown(number: StampedNumber): boolean {
  return number.stamped !== '' && number.stamped !== '?';
}

function numbers({ book, say }: ViewContext): Block {
  const rows: readonly Row[] = book.records.machine.numbers.map((number) =>
    row(
      say(number.name),
      isKnown(number) ? { text: number.stamped, big: true } : { box: 'line' },
      isKnown(number)
        ? number.knownBy
        : say(book.copy === 'buyer' && number.private ? 'not in this copy' : 'not known'),
    ),
  );
  return {
    type: 'table',
    caption: say('Numbers, character by character'),
    columns: [column(say('Number'), 2), column(say('As stamped'), 4), column(say('How it is known'), 5)],
    rows,
    empty: say('No number is recorded.'),
    use: 'read',
  };
}

function features(context: ViewContext): readonly Fact[] {
  const { book, say } = context;
  const has = book.records.machine.features;
  return [
    ...fact(say('Engine'), say(engineText(has))),
    ...fact(say('Lubrication'), say(featureText(has, 'lubrication'))),
    ...fact(say('Ignition'), say(ignitionText(has))),
    ...fact(say('Electrics'), has.volts === undefined ? say('none') : writtenText(has.volts)),
    ...fact(say('Battery'), say(featureText(has, 'battery'))),
    ...fact(say('Gearbox'), has.gearbox === undefined ? undefined : say(gearboxText(has))),
    ...fact(say('Front brake'), say(featureText(has, 'frontBrake'))),
    ...fact(say('Rear brake'), say(featureText(has, 'rearBrake'))),
    ...fact(say('Final drive'), say(featureText(has, 'finalDrive'))),
    ...fact(say('Wheels'), say(featureText(has, 'wheels'))),
    ...geometry(book, say),
  ];
}

function engineText(has: Features): string {
  const many = featureText(has, 'cylinders');
  const cylinders = many === 'not known' ? 'cylinders not known' : many === '1' ? 'single' : `${many} cylinders`;
  const stroke = featureText(has, 'stroke');
  return stroke === 'not known' ? `strokes not known, ${cylinders}` : `${stroke}-stroke, ${cylinders}`;
}

function ignitionText(has: Features): string {
  const ignition = featureText(has, 'ignition');
  const kind = ignition === 'magneto' ? featureText(has, 'magneto') : 'not known';
  const both = [kind === 'not known' ? ignition : `${kind} ${ignition}`, featureText(has, 'trigger')];
  return both.every((one) => one === 'not known') ? 'not known' : both.join(', ');
}

function gearboxText(has: Features): string {
  const gearbox = featureText(has, 'gearbox');
  return gearbox === 'unit' ? 'in unit with the engine' : gearbox;
}

function geometry(book: Book, say: (words: string) => string): readonly Fact[] {
  const { bore, stroke, frontTyre, rearTyre, chainPitch, chainLinks } = book.records.machine.geometry;
  const square: Text | undefined =
    bore === undefined || stroke === undefined ? undefined : `${writtenText(bore)} × ${writtenText(stroke)}`;
  return [
    ...fact(say('Bore and stroke'), square),
    ...headFigures(book).flatMap(({ id, name, figure }) => fact(say(name), [inlineFigure(figure, id)])),
    ...fact(say('Front tyre'), frontTyre),
    ...fact(say('Rear tyre'), rearTyre),
    ...fact(say('Chain pitch'), chainPitch === undefined ? undefined : writtenText(chainPitch)),
    ...fact(say('Chain links'), chainLinks === undefined ? undefined : count(chainLinks)),
  ];
}

function notKnown({ book, say }: ViewContext): readonly Block[] {
  const numberNames = book.records.machine.numbers
    .filter((number) => !isKnown(number) && !(book.copy === 'buyer' && number.private))
    .map((number) => number.name);
  const torques = book.torque.filter((one) => one.basis === 'none' && one.fastener.duty === undefined);
  const settings = book.records.maker.settings.filter((setting) => setting.value.kind === 'unknown');
  const open = [
    ...numberNames.map((name) => `${say(name)} ${say('number')}`),
    ...torques.map(({ fastener }) => `${say('torque')}: ${fastener.name}`),
    ...settings.map((setting) => setting.name),
    ...(book.odometer.now.machine === undefined ? [say('the distance of the machine')] : []),
  ];
  return [
    heading(2, say('What is not known'), 'not-known'),
    open.length === 0 ? lines([say('Nothing that is asked for here is open.')]) : lines(open),
  ];
}
