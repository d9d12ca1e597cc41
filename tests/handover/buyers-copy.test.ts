// The buyer's copy: nothing private is left in any text of it, all else is byte for byte as it was, and it still reads without a problem.
import { describe, expect, test } from 'vitest';
import { signedPrint } from '../../src/records/signed-print.ts';
import { small } from '../command/small-machine.ts';
import { asAssets, binderOfCopy, copyOf, noChoices, textOf } from './copy-of.ts';
import { plantedFolder, plantedJob } from './planted.ts';

const words = [
  'Odalys Brenner',
  '17 Quarry Lane',
  '07700 900 417',
  'odalys@mill.example',
  'Mr Brenner',
  'policy 91-0333',
  'Birchhof bei Lindau',
  'Ольга Крылова',
  '山田太郎',
  "O'Dwyer-Śliwa",
];

/** Letters and digits only, small: however it was written. */
function bare(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '');
}

describe.each(words)('%s', (word) => {
  const folder = plantedFolder(word);
  const copy = copyOf(folder);
  test('was planted in many places and is in none', () => {
    expect(bare(Object.values(folder).join('\n')).split(bare(word)).length).toBeGreaterThan(28);
    expect(bare(textOf(copy))).not.toContain(bare(word));
    expect(copy.refused).toEqual([]);
  });
  test('the copy reads without a problem, and its sheets and pages do not hold it', () => {
    const { binder, wrong } = binderOfCopy(copy);
    expect(wrong).toEqual([]);
    const all = JSON.stringify([binder?.sheets.map(({ blocks }) => blocks), binder?.pages.map((page) => page.make())]);
    // The pages of the manual are ours; none of these words is in them.
    expect(bare(all).includes(bare(word))).toBe(false);
  });
});

test('words that look private go without being listed, unless they may go', () => {
  const folder = { ...small, 'jobs/2024-05-04-seat.md': plantedJob('17 Quarry Lane') };
  expect(textOf(copyOf(folder))).not.toContain('Quarry');
  const kept = copyOf(folder, undefined, { ...noChoices, mayGo: ['17 quarry lane'] });
  expect(kept.files.find(({ file }) => file === 'jobs/2024-05-04-seat.md')?.text).toBe(plantedJob('17 Quarry Lane'));
});

test('a telephone number is found however its digits are grouped', () => {
  const folder = {
    ...small,
    'machine.yaml': `${small['machine.yaml'] ?? ''}private words: ["07700 900417"]\n`,
    'story.md': 'Ring (07700) 900-417 or 07700900417, not 07700 900418.\n',
  };
  const story = copyOf(folder).files.find(({ file }) => file === 'story.md')?.text;
  expect(story).not.toMatch(/417/u);
});

const signed = `---
title: Signed
date: 2024-05-05
kind: service
state: done
hands: [Tamsin Orrell, helper]
odometer: 1011 mi
checks: [{check: chain-looked-at, by: Tamsin Orrell, checked by: Piet Alderman}]
signed: {by: Tamsin Orrell, date: 2024-05-05, print: PRINT}
---
Tamsin oiled it, orrell style; Piet looked.
`.replace(
  'checks: [{check: chain-looked-at, by: Tamsin Orrell, checked by: Piet Alderman}]\n',
  'releases: [{of: before-moving, by: Piet Alderman, why: pushed}]\n',
);

test('a person becomes a hand, the same everywhere, and two people stay two', () => {
  const text = signed.replace(', print: PRINT', '');
  const made = copyOf({ ...small, 'jobs/2024-05-05-signed.md': text }).files.find(({ file }) =>
    file.includes('signed'),
  )?.text;
  expect(made).toContain('hands: [hand 1, helper]');
  expect(made).toContain('by: hand 2, why: pushed');
  expect(made).toContain('signed: {by: hand 1, date: 2024-05-05}');
  expect(made).toMatch(/^hand 1 oiled it, .* style; hand 2 looked\.$/mu);
});

describe('a signed record', () => {
  const right = signed.replace('PRINT', signedPrint(signed));
  const copied = (text: string): string =>
    copyOf({ ...small, 'jobs/2024-05-05-signed.md': text }).files.find(({ file }) => file.includes('signed'))?.text ??
    '';
  test('that stands as it was signed does so in the copy', () => {
    const text = copied(right);
    expect(text).not.toContain('Tamsin');
    expect(text).toContain(`print: ${signedPrint(text)}`);
  });
  test('that was changed after it was signed shows it in the copy', () => {
    const text = copied(right.replace('oiled it', 'greased it'));
    expect(text).not.toContain(`print: ${signedPrint(text)}`);
  });
});

test('numbers that open a lock or are marked, the address of the site, what would be spent', () => {
  const machine = (small['machine.yaml'] ?? '')
    .replace(
      'numbers:\n',
      'numbers:\n  key: QX-7731\n  registration: {stamped: ZED 219T, private: yes, photo: photos/plate.jpg}\n',
    )
    .replace(
      'units: metric\n',
      'units: metric\nplace: {altitude: 85 m, site: "https://shed.example"}\nspending limit: 731.00 GBP\n',
    );
  const job =
    '---\ntitle: Plate\ndate: 2024-05-06\nkind: repair\nstate: done\n---\nPlate zed219t cleaned; lock qx 7731; limit was 731.00 GBP.\n';
  const copy = copyOf(
    { ...small, 'machine.yaml': machine, 'jobs/2024-05-06-plate.md': job },
    asAssets('photos/plate.jpg'),
  );
  expect(textOf(copy)).not.toMatch(/7731|219|shed|731/u);
  expect(copy.pictures).toEqual([]);
  expect(textOf(copy)).toContain('altitude: 85 m');
  expect(binderOfCopy(copy).wrong).toEqual([]);
});

test('pictures that are private, papers, and lines in the text that show them', () => {
  const job = `---
title: Pictures
date: 2024-05-07
kind: repair
state: done
photos:
  - {file: photos/mine.jpg, caption: My kitchen, private: yes}
  - {file: documents/bill.jpg, caption: Bill of the shop}
  - {file: documents/open.jpg, caption: Page of the book, private: no}
  - {file: photos/go.jpg, caption: Goes, cover: [{left: 10 %, top: 20 %, width: 30 %, height: 40 %}]}
---
![The kitchen](photos/mine.jpg) and ![The bill](documents/bill.jpg "x") and ![Goes](photos/go.jpg)
`;
  const assets = asAssets(
    'photos/mine.jpg',
    'documents/bill.jpg',
    'documents/open.jpg',
    'photos/go.jpg',
    'photos/unnamed.jpg',
  );
  const copy = copyOf({ ...small, 'jobs/2024-05-07-pictures.md': job }, assets);
  expect(copy.pictures.map(({ asset }) => asset.file)).toEqual(['documents/open.jpg', 'photos/go.jpg']);
  expect(copy.pictures[1]?.cover).toHaveLength(1);
  expect(textOf(copy)).not.toMatch(/kitchen|mine|[Bb]ill/u);
  expect(binderOfCopy(copy).wrong).toEqual([]);
});

test('other machines of the workshop, its file, and what was bought for several', () => {
  const job =
    '---\ntitle: Swap\ndate: 2024-05-08\nkind: repair\nstate: done\nparts: [{part: carburettor, moved to: Heron 90}]\n---\nOff to the Heron 90, number H90-5512.\n';
  const folder = {
    ...small,
    'jobs/2024-05-08-swap.md': job,
    '../workshop.yaml': 'splitpin: 1\nsuppliers: [{name: shop of Heron 90}]\n',
    '../instruments.yaml': 'splitpin: 1\ninstruments: []\n',
  };
  const copy = copyOf(folder, [], { ...noChoices, otherMachines: ['Heron 90', 'H90-5512'] });
  expect(textOf(copy)).not.toMatch(/Heron|5512/u);
  expect(textOf(copy)).toContain('moved to: another machine');
  expect(copy.shared.map(({ file }) => file)).toEqual(['../instruments.yaml']);
  expect(copy.staying).toContain('../workshop.yaml');
});

test('prices go or stay as the owner says', () => {
  const job = `---
title: Bills
date: 2024-05-09
kind: buying
state: done
work: [{sent out: seat, to: the sewer, price: 43.17 GBP}]
parts: [{part: tube, price: 17.31 GBP, state: here, core: {deposit: 71.13 GBP}}]
money:
  - {paid: 313.71 GBP, for: the machine, group: buying}
  - {refund: 7.13 GBP, for: post}
---
In all £313.71, and 17.31 GBP for the tube.
`;
  const folder = { ...small, 'jobs/2024-05-09-bills.md': job };
  expect(textOf(copyOf(folder))).toContain(job);
  const without = copyOf(folder, undefined, { ...noChoices, withoutPrices: true });
  expect(textOf(without)).not.toMatch(/43\.17|17\.31|71\.13|313\.71|7\.13/u);
  const { binder, wrong } = binderOfCopy(without);
  expect(wrong).toEqual([]);
  // Of a drawing only the words: its lines lie anywhere.
  const all = JSON.stringify(
    binder?.sheets.map(({ blocks }) => blocks),
    (_, value: unknown) => (typeof value === 'number' ? undefined : value),
  );
  expect(all).not.toContain('0.00\u00a0GBP');
  expect(all).toContain('No amount goes with this copy');
  expect(all).not.toMatch(/43\.17|17\.31|71\.13|313\.71|7\.13/u);
});

test.each([
  ['plain', (text: string) => text],
  [
    'with a byte order mark and two characters at line ends',
    (text: string) => `\uFEFF${text.replaceAll('\n', '\r\n')}`,
  ],
])('every other byte stays: %s', (_name, saved) => {
  const job = saved(
    '---\ntitle:   Odd   spaces\ndate: 2024-05-10\nkind: repair   # why not\nstate: done\nhands:\n  - Tamsin Orrell\nfor: {value: secret reason, private: yes}\n---\n\n\nTwo  spaces  \n',
  );
  const copy = copyOf({ ...small, 'jobs/2024-05-10-odd.md': job });
  const made = copy.files.find(({ file }) => file.includes('odd'))?.text;
  expect(made).toBe(job.replace('Tamsin Orrell', 'hand 1').replace('value: secret reason', 'value: "?"'));
  for (const [file, text] of Object.entries(small)) expect(copy.files).toContainEqual({ file, text });
});

test('a private word in the name of a file is refused, and said which', () => {
  const folder = {
    ...small,
    'machine.yaml': `${small['machine.yaml'] ?? ''}private words: [Orrell]\n`,
    'jobs/2024-05-11-orrell-visit.md': '---\ntitle: Visit\ndate: 2024-05-11\nkind: repair\nstate: done\n---\n',
  };
  expect(copyOf(folder).refused).toEqual([
    'The name of the file jobs/2024-05-11-orrell-visit.md holds a private word (Orrell): give it another name.',
  ]);
});

test('a name that not every system can hold, or that the lists of a package cannot, is refused', () => {
  const job = (photo: string): string =>
    `---\ntitle: P\ndate: 2024-05-11\nkind: repair\nstate: done\nphotos: [{file: "${photo}", caption: x}]\n---\n`;
  for (const photo of ['photos/50%.jpg', 'photos/a:b.jpg', 'photos/aux.jpg']) {
    const copy = copyOf({ ...small, 'jobs/2024-05-11-p.md': job(photo) }, asAssets(photo));
    expect(copy.refused).toEqual([expect.stringContaining(`The name of the file ${photo} has `)]);
  }
});
