// A machine on the disk with private things of every kind in it, and its package made in a folder of its own.
import { mkdtempSync, readFileSync, readdirSync, realpathSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { answersBeforehand } from '../../src/command/asker.ts';
import { handoverCommand, type HandoverOptions } from '../../src/command/handover-command.ts';
import { verifyCommand } from '../../src/command/verify-command.ts';
import { small, smallMachine } from '../command/small-machine.ts';
import { plantedJob } from './planted.ts';

/** Private values, each written so that it can be searched for as it is. */
export const secrets = [
  'Odalys Brenner',
  'Tamsin',
  '17 Quarry Lane',
  '07700 900 417',
  'odalys@mill.example',
  'policy 91-0333',
  'Birchhof',
  'QX-7731',
  'ZED 219T',
  'shed.example',
  '731.00 GBP',
  'Heron 90',
  'Ольга Крылова',
  'kitchen shelf',
  'MAKERNOTE-GPS-51-4',
] as const;

export interface Said {
  readonly code: number;
  readonly out: string;
}

/** Runs one of the commands in a folder and gives what it said. */
export async function run(
  folder: string,
  of: (around: Parameters<typeof verifyCommand>[1]) => Promise<number>,
): Promise<Said> {
  const lines: string[] = [];
  const keep = (line: string): void => void lines.push(line);
  const terminal = { say: keep, tell: keep, progress: () => undefined, colour: false };
  const code = await of({ terminal, folder, clock: () => new Date(2024, 5, 1) });
  return { code, out: lines.join('\n') };
}

export async function handOver(
  machine: string,
  options: HandoverOptions = { yes: true },
  step?: (name: string) => void,
  answers: readonly string[] = [],
): Promise<Said> {
  return run(dirname(machine), async (around) =>
    handoverCommand(machine, { today: '2024-06-01', ...options }, around, answersBeforehand(answers), step),
  );
}

export async function verify(path: string): Promise<Said> {
  return run(dirname(path), async (around) => verifyCommand(path, around));
}

async function photo(grey: number): Promise<Buffer> {
  return sharp({ create: { width: 200, height: 100, channels: 3, background: { r: grey, g: 200, b: 200 } } })
    .withExif({
      IFD0: { Artist: 'Odalys Brenner', ImageDescription: 'MAKERNOTE-GPS-51-4' },
      IFD3: { GPSLatitude: '51/1 4/1 0/1' },
    })
    .jpeg()
    .toBuffer();
}

/** A small machine in a workshop with another, and every secret somewhere. */
export async function secretMachine(): Promise<string> {
  const machine = (small['machine.yaml'] ?? '')
    .replace('numbers:\n', 'numbers:\n  key: QX-7731\n  registration: {stamped: ZED 219T, private: yes}\n')
    .concat(
      'place: {site: "https://shed.example"}\nspending limit: 731.00 GBP\nprivate words: [Odalys Brenner, policy 91-0333, Birchhof, Ольга Крылова]\n',
    );
  const job = plantedJob('Odalys Brenner')
    .replace('hands: [owner]', 'hands: [owner, Tamsin Orrell]\nsigned: {by: Tamsin Orrell, date: 2024-05-04}')
    .replace(
      '  - {file: photos/plain.jpg, caption: Seat of Odalys Brenner}',
      '  - {file: photos/plain.jpg, caption: Seat of Odalys Brenner, cover: [{left: 0 %, top: 0 %, width: 50 %, height: 100 %}]}\n  - {file: photos/mine.jpg, caption: My kitchen shelf, private: yes}',
    )
    .replace(
      'Sewn by',
      'At 17 Quarry Lane, phone 07700 900 417, odalys@mill.example, Birchhof, key QX 7731, plate ZED219T, by Ольга Крылова, moved from the Heron 90. Sewn by',
    );
  const folder = smallMachine({
    'machine.yaml': machine,
    'jobs/2024-05-04-seat.md': job,
    'story.md': 'It stood at Birchhof with policy 91-0333.\n',
    'jobs/2024-05-12-Переборка двигателя.md':
      '---\ntitle: Переборка двигателя\ndate: 2024-05-12\nkind: repair\nstate: done\n---\nСнято, смазано, собрано.\n',
    'photos/plain.jpg': await photo(10),
    'photos/mine.jpg': await photo(90),
    '../other/machine.yaml': (small['machine.yaml'] ?? '').replace('name: Test machine', 'name: Heron 90'),
    '../instruments.yaml': 'splitpin: 1\ninstruments: []\n',
  });
  return folder;
}

/** Every file below a folder with its bytes, by path. */
export function bytesBelow(folder: string): ReadonlyMap<string, Buffer> {
  const found = new Map<string, Buffer>();
  for (const each of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!each.isFile()) continue;
    const path = join(each.parentPath, each.name);
    found.set(path.slice(folder.length + 1), readFileSync(path));
  }
  return found;
}

export function emptyFolder(): string {
  return realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-package-')));
}
