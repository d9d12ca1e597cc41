// Sheets invented for the tests of paper: every type of block, plain and hostile.
import type { Block, Paragraph, Row, Sheet } from '../../src/sheet/sheet.ts';
import { plot } from './sample-plot.ts';

const nbsp = '\u00a0';

export function sheetOf(blocks: readonly Block[], more: Partial<Sheet> = {}): Sheet {
  return {
    id: 'sample',
    code: 'SM',
    title: 'Strip the top end',
    language: 'en-GB',
    machine: 'Larkmoor Pipit 175',
    frame: '…04417',
    recordsDate: '20 November 2026',
    recordsDay: '2026-11-20',
    recordsVersion: 'version 3f9a1c',
    paper: 'a4',
    binding: 'left',
    foot: 'none',
    leftOut: [],
    blocks,
    ...more,
  };
}

const prose: readonly Paragraph[] = [
  {
    kind: 'paragraph',
    text: [
      'The head came off without a fight. Nuts slackened in ',
      { kind: 'strong', text: 'three passes' },
      ', the last at ',
      { kind: 'figure', text: '2.2 kgf·m', mark: 'M' },
      '. See ',
      { kind: 'link', text: 'the readings', to: 'sample:readings' },
      ' and the note of ',
      { kind: 'em', text: 'last autumn' },
      ', where ',
      { kind: 'struck', text: '50.20 mm' },
      ' was written for 50.02 mm. Carbon on both crowns, wet on the right; the ring ends had walked past their pegs on the left piston.',
    ],
  },
  { kind: 'heading', level: 3, text: 'What was found' },
  {
    kind: 'list',
    ordered: false,
    items: [
      [{ kind: 'paragraph', text: 'Base gasket torn at the transfer port, left side.' }],
      [
        { kind: 'paragraph', text: 'Two studs came out with the nuts:' },
        {
          kind: 'list',
          ordered: true,
          items: [[{ kind: 'paragraph', text: 'front left' }], [{ kind: 'paragraph', text: 'rear right' }]],
        },
      ],
    ],
  },
  { kind: 'quote', paragraphs: [{ kind: 'paragraph', text: 'Ring gap is measured square in the bore, 20 mm down.' }] },
  { kind: 'code', text: 'E 19 -> 21\n  main jet  90\n  needle    3rd groove\n' },
  {
    kind: 'table',
    head: ['jet', 'was', 'is'],
    rows: [
      ['main', '95', '90'],
      ['pilot', '20', '20'],
    ],
  },
];

const teardown: Row[] = [
  { kind: 'band', text: 'Before the head comes off' },
  {
    kind: 'band',
    grade: 'WARNING',
    text: 'Hot exhaust burns. Let the engine cool down to the hand before a nut is touched.',
  },
];
const parts = [
  'Exhaust pipes, both',
  'Carburettor and manifold',
  'Plug caps',
  'Cylinder head nuts',
  'Cylinder head',
  'Head gasket',
  'Cylinders',
  'Gudgeon pin circlips',
];
for (const [index, part] of parts.entries()) {
  teardown.push({
    kind: 'cells',
    id: 'step-' + String(index + 1),
    cells: [
      { text: String(index + 1) },
      { text: part },
      { text: index === 3 ? 'M8 × 1.25, 30 mm, 8 off, hexagon' : 'M6 × 1.0, 20 mm' },
      { text: index % 2 === 0 ? 'A' + String(index) : '' },
      { text: 'arrow to the front' },
      { box: 'tick', done: index < 2 },
      { box: 'tick' },
    ],
  });
  if (index === 3)
    teardown.push({ kind: 'band', grade: 'CAUTION', text: 'Slacken crosswise in three passes, or the head warps.' });
}

export const everyBlock: readonly Block[] = [
  {
    type: 'caution',
    grade: 'WARNING',
    text: 'Petrol vapour sinks and travels to a flame. Work outdoors, no pilot light, extinguisher in reach, approved can.',
  },
  { type: 'caution', grade: 'CAUTION', text: 'Start every thread by hand, three turns.' },
  { type: 'caution', grade: 'NOTE', text: 'Set tappets cold, timing after gap.' },
  {
    type: 'facts',
    across: 2,
    facts: [
      { name: 'job', value: '2026-11 top end' },
      { name: 'state', value: 'planned' },
      { name: 'odometer', value: '24' + nbsp + '106' + nbsp + 'mi' },
      { name: 'last done', value: '2025-03-02', note: 'at 22 780 mi' },
      { name: 'continues', value: 'readings of 2025-03-02' },
    ],
  },
  { type: 'heading', level: 2, id: 'strip', text: 'Strip' },
  {
    type: 'table',
    use: 'work',
    empty: 'No steps.',
    columns: [
      { head: 'step', width: 1 },
      { head: 'remove', width: 4 },
      { head: 'fastener', width: 4 },
      { head: 'bag', width: 1 },
      { head: 'where, which way', width: 3 },
      { head: 'off', width: 1, align: 'centre' },
      { head: 'on', width: 1, align: 'centre' },
    ],
    rows: teardown,
  },
  { type: 'heading', level: 2, id: 'readings', text: 'Measure' },
  {
    type: 'blanks',
    empty: 'Nothing to measure.',
    items: [
      {
        id: 'bore.right.top',
        item: 'Bore',
        position: 'right, top',
        unit: 'mm',
        standard: '50.00–50.02',
        limit: '50.10',
        last: '50.03 mm on 2025-03-02',
        expected: '50.05 to 50.07 mm',
        instrument: 'bore gauge',
        condition: 'cold',
      },
      {
        id: 'bore.right.bottom',
        item: 'Bore',
        position: 'right, bottom',
        unit: 'mm',
        standard: '50.00–50.02',
        limit: '50.10',
        last: '50.06 mm on 2025-03-02',
        found: '50.09',
        verdict: 'worn, usable',
      },
      { id: 'ring.gap', item: 'Ring gap, top ring', unit: 'mm', standard: '0.15–0.30', limit: '0.80' },
    ],
  },
  { type: 'heading', level: 2, id: 'checks', text: 'Before the first start' },
  {
    type: 'checklist',
    items: [
      {
        id: 'stop',
        text: 'The engine can be stopped: ignition switch earths the points',
        why: 'It must be possible to stop it at any speed.',
        state: 'proved 2026-10-04',
      },
      { id: 'oil', text: 'Gearbox oil filled', blank: { unit: 'ml', hint: '650' }, state: 'open' },
      {
        id: 'fuel',
        text: 'Temporary supply hung, 25:1',
        caution: { grade: 'WARNING', text: 'Petrol: no flame, no spark.' },
        done: true,
        state: 'proved 2026-10-05',
      },
      { id: 'compression', text: 'Compression, throttle open, warm', blank: { unit: 'bar', hint: '6.5 to 8.0' } },
    ],
  },
  plot,
  { type: 'heading', level: 2, id: 'torque', text: 'Torque' },
  {
    type: 'table',
    use: 'read',
    caption: 'Cylinder and head',
    empty: 'No fasteners.',
    columns: [
      { head: 'fastener', width: 4 },
      { head: 'thread', width: 2 },
      { head: 'N·m', width: 1.5, align: 'right' },
      { head: 'kgf·m', width: 1.5, align: 'right' },
      { head: 'lbf·ft', width: 1.5, align: 'right' },
      { head: 'dry or oiled', width: 2 },
      { head: 'origin', width: 3 },
    ],
    rows: [
      {
        kind: 'cells',
        cells: [
          { text: 'Cylinder head nuts' },
          { text: 'M8 × 1.25' },
          { text: '21.6', big: true },
          { text: '2.2', big: true },
          { text: '15.9', big: true },
          { text: 'dry' },
          { text: 'workshop book 1968, page 31' },
        ],
      },
      {
        kind: 'cells',
        cells: [
          { text: 'Flywheel nut' },
          { text: 'M10 × 1.25' },
          { text: [{ kind: 'struck', text: '49' }], big: true },
          { text: '5', big: true },
          { text: '36', big: true },
          { text: 'dry' },
          { text: 'corrected 2025-01-04' },
        ],
      },
      {
        kind: 'cells',
        cells: [
          { text: 'Clutch centre nut' },
          { text: 'M14 × 1.5' },
          { box: 'write', unit: 'N·m' },
          {},
          {},
          { text: 'oiled' },
          { text: 'not known' },
        ],
      },
    ],
  },
  { type: 'table', use: 'read', empty: 'Nothing is off.', columns: [{ head: 'part', width: 1 }], rows: [] },
  { type: 'prose', paragraphs: prose },
  {
    type: 'photo',
    file: 'photos/head.jpg',
    caption: 'The head from below, as it came off',
    alt: 'Two combustion chambers, the right one wet',
    taken: '2024-06-01',
    size: 'half',
    width: 800,
    height: 600,
  },
  {
    type: 'photo',
    file: 'photos/missing.jpg',
    caption: 'Left piston, ring ends',
    alt: 'A piston',
    size: 'half',
    width: 600,
    height: 800,
  },
  {
    type: 'grid',
    caption: 'Run log',
    columns: ['minute', 'choke', 'throttle', 'rpm or feel', 'smoke', 'leak, noise, note'].map((head, index) => ({
      head,
      width: index === 5 ? 4 : 1,
    })),
    rows: 6,
    filled: [['0', 'on', 'shut']],
  },
  { type: 'signature', lines: [{ role: 'work done by', name: 'J. Marl', date: '2026-11-20' }, { role: 'checked by' }] },
  { type: 'code', text: 'larkmoor-pipit-175/jobs/2026-11-top-end', caption: 'This job' },
  { type: 'break', to: 'back' },
  { type: 'heading', level: 2, id: 'tags', text: 'Tags' },
  {
    type: 'cards',
    size: { width: 60, height: 120 },
    hole: true,
    cards: ['A1', 'A2', 'A3', 'A4'].map((bag) => ({
      title: 'Bag ' + bag,
      lines: [
        'Carburettor and manifold',
        'job 2026-11 top end',
        'M6 × 20, 4 off',
        ['since ', { kind: 'strong' as const, text: '2026-11-20' }],
      ],
      code: 'pipit/' + bag,
      foot: 'Larkmoor Pipit 175 …04417',
    })),
  },
];
