// wiring.yaml: this machine's own wires, runs of cables and hoses, and earths, read off it before anything is pulled apart.
import type { Wiring } from '../wiring-model.ts';
import { entry, may, need, or, wholeFile } from '../shapes/fields.ts';
import { day, quantity } from '../shapes/measured.ts';
import { id, list, text } from '../shapes/plain.ts';
import { andThen } from '../shapes/shape.ts';
import { format } from './format.ts';
import { defineRecord } from './record-kind.ts';

const wire = entry({
  id: need(id, 'its permanent id', { example: 'coil-feed' }),
  circuit: may(text, 'the group it is printed in', { example: 'Ignition' }),
  colours: need(text, 'colours in words, ground colour first', { example: 'black with white' }),
  from: need(text, 'where it begins', { example: 'ignition switch' }),
  to: need(text, 'where it ends', { example: 'left coil' }),
  connector: may(text, 'mark or place of the connector between', { example: 'bullet in the headlamp shell' }),
  through: may(quantity('resistance', '0.2 Ω'), 'resistance from end to end, as last measured'),
  photo: may(text, 'a picture of it, below the machine folder', { example: 'photos/headlamp-shell.jpg' }),
  note: may(text, 'your own words'),
});

const run = entry({
  id: need(id, 'its permanent id', { example: 'clutch-cable' }),
  name: need(text, 'what it is called on sheets', { example: 'Clutch cable' }),
  way: need(text, 'which way it goes, from end to end', { example: 'left of the stem, below the tank' }),
  clips: may(text, 'clips and ties it goes through', { example: 'one clip at the headstock' }),
  photo: may(text, 'a picture of it, below the machine folder', { example: 'photos/cables.jpg' }),
  note: may(text, 'your own words'),
});

const earth = entry({
  id: need(id, 'its permanent id', { example: 'engine-earth' }),
  name: need(text, 'from the battery to where', { example: 'Engine case' }),
  on: need(text, 'what is switched on while it is read', { example: 'ignition' }),
  drop: may(quantity('voltage', '0.05 V'), 'volts lost, as last measured'),
});

export const wiringKind = defineRecord<Wiring>({
  id: 'wiring',
  purpose: 'This machine’s own wires, earths, and runs of cables and hoses, as found.',
  files: 'wiring.yaml',
  matches: (file) => file === 'wiring.yaml',
  shape: andThen(
    wholeFile({
      splitpin: need(format, 'the version of the format', { example: '1' }),
      read: may(day, 'when it was read off the machine', { example: '2024-05-05' }),
      wires: or(list(wire), [], 'wires, one an entry'),
      runs: or(list(run), [], 'how cables and hoses run'),
      earths: or(list(earth), [], 'places whose earth is looked at'),
    }),
    ({ read, wires, runs, earths }) => ({ ...(read === undefined ? {} : { read }), wires, runs, earths }),
  ),
});
