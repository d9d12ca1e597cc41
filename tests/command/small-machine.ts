// A small machine of a few records, written to a folder, for tests that spoil something in it.
import { mkdirSync, mkdtempSync, realpathSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

export const small: Readonly<Record<string, string>> = {
  'machine.yaml': `splitpin: 1
name: Test machine
make: Test
model: One
year: 1970
numbers:
  frame: {stamped: T1-000123, known by: read from the headstock}
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
  - {id: clock, unit: mi, digits: 5, from: {date: 2024-01-01, reads: 900 mi}, state: working}
units: metric
spelling: uk
paper: a4
currency: GBP
`,
  'maker/book.yaml': `splitpin: 1
source: {title: Test book, edition: "1970"}
fasteners:
  - {id: head-nut, name: Head nuts, of: head, thread: M8x1.25, count: 4, torque: 20 N·m, page: 3}
limits:
  - {id: ring-gap, name: Ring gap, unit: mm, standard: 0.20 to 0.30 mm, limit: 0.80 mm max, page: 4}
`,
  'jobs/2024-03-02-bought.md': `---
title: Bought
date: 2024-03-02
kind: buying
state: done
odometer: 1000 mi
---
Found in a barn.
`,
  'jobs/2024-04-06-head-off.md': `---
title: Head off
date: 2024-04-06
kind: strip
state: done
odometer: 1000 mi
work:
  - {removed: head, bag: 1, fasteners: {head-nut: 4}}
readings:
  - {item: ring-gap, found: 0.45 mm}
---
It came off easily.
`,
  'jobs/2024-05-04-old-ride.md': `---
title: Old ride
date: 2024-02-03
kind: ride
state: done
odometer: 950 mi
---
Round the block.
`,
};

/** A folder of its own with the machine in it, under a name of choice; the path given is the machine folder's. */
export function smallMachine(more: Readonly<Record<string, string | Uint8Array>> = {}, name = 'bike'): string {
  const folder = join(realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-command-'))), name);
  put(folder, { ...small, ...more });
  return folder;
}

/** Writes files below a folder. */
export function put(folder: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  for (const [file, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), content);
  }
}
