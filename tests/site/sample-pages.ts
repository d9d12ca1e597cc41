// Sample pages with every block type, so that templates can be tried before and apart from real records.
import type { Block, Page } from '../../src/sheet/sheet.ts';

const noBreak = '\u00a0';

/** One block of every type; the key is its type, so that a new type without a sample does not compile. */
export const sampleBlocks: { readonly [Type in Block['type']]: Extract<Block, { type: Type }> } = {
  heading: { type: 'heading', level: 1, text: 'Top end, taking apart', id: 'taking-apart' },
  prose: {
    type: 'prose',
    paragraphs: [
      {
        kind: 'paragraph',
        text: [
          'Drained the crankcase and found ',
          { kind: 'strong', text: 'water' },
          ' in it, as told in ',
          { kind: 'link', text: 'the day it came home', to: 'job:2024-05-04-bought' },
          '. Compression was ',
          { kind: 'figure', text: `6.8${noBreak}bar`, to: 'working:compression', mark: 'w' },
          ', which is ',
          { kind: 'em', text: 'not' },
          ' what the book wants; the old reading of ',
          { kind: 'struck', text: `8.6${noBreak}bar` },
          ' was misread. Fuse marked ',
          { kind: 'code', text: 'F2' },
          '.',
        ],
      },
      { kind: 'heading', level: 3, text: 'What stood in the way' },
      {
        kind: 'list',
        ordered: false,
        items: [
          [{ kind: 'paragraph', text: 'The barrel nuts were rounded.' }],
          [
            { kind: 'paragraph', text: 'The small end rattled:' },
            {
              kind: 'list',
              ordered: true,
              items: [[{ kind: 'paragraph', text: 'left side' }], [{ kind: 'paragraph', text: 'right side, less' }]],
            },
          ],
        ],
      },
      { kind: 'quote', paragraphs: [{ kind: 'paragraph', text: 'It ran when it was parked.' }] },
      { kind: 'code', text: 'L  0.35\nR  0.40' },
      { kind: 'code', text: 'splitpin check my-bike' },
      { kind: 'table', head: ['Side', 'Ring gap'], rows: [['left', `0.35${noBreak}mm`]] },
    ],
  },
  facts: {
    type: 'facts',
    across: 2,
    facts: [
      { name: 'Frame number', value: 'PT1-04417', note: 'read from the headstock' },
      { name: 'Engine number', value: 'PT1E-04452' },
      { name: 'First used', value: '1969' },
      { name: 'Clock', value: [{ kind: 'figure', text: `12\u202f480${noBreak}mi` }] },
    ],
  },
  table: {
    type: 'table',
    caption: 'Fasteners of the top end',
    columns: [
      { head: 'Fastener', width: 4 },
      { head: 'Thread', width: 2 },
      { head: 'N·m', width: 1, align: 'right' },
      { head: 'Off', width: 1, align: 'centre' },
      { head: 'On', width: 1, align: 'centre' },
      { head: 'Set to', width: 2 },
    ],
    rows: [
      { kind: 'band', text: 'Cylinder head' },
      {
        kind: 'cells',
        id: 'head-nut',
        cells: [
          { text: 'Head nut, four' },
          { text: 'M8 × 1.25' },
          { text: [{ kind: 'figure', text: '22', to: 'working:head-nut', mark: 'm' }], big: true },
          { box: 'tick', done: true },
          { box: 'tick' },
          { box: 'write', unit: 'N·m', id: 'head-nut' },
        ],
      },
      { kind: 'band', text: 'Slacken crosswise, a quarter turn at a time, cold.', grade: 'CAUTION' },
      {
        kind: 'cells',
        cells: [
          { text: 'Barrel nut' },
          { text: 'M8' },
          { text: [{ kind: 'struck', text: '18' }] },
          {},
          {},
          { box: 'line' },
        ],
      },
    ],
    empty: 'No fasteners are listed.',
    use: 'work',
  },
  checklist: {
    type: 'checklist',
    items: [
      {
        id: 'fuel-off',
        text: 'Fuel tap closed, pipe off and plugged',
        why: 'The carburettor comes off with the pipe on it.',
        done: true,
        state: 'proved 2026-05-01',
        caution: { grade: 'WARNING', text: 'Petrol vapour lies on the floor and finds a flame across the room.' },
      },
      { id: 'plug-gap', text: 'Plug gap', blank: { unit: 'mm', hint: '0.5–0.6' } },
    ],
  },
  blanks: {
    type: 'blanks',
    items: [
      {
        id: 'bore-top-left',
        item: 'Bore',
        position: 'left, top',
        unit: 'mm',
        standard: '48.00–48.02',
        limit: '48.10',
        last: '48.06, 2025-03-02',
        expected: '48.07',
        condition: 'cold',
        instrument: 'bore gauge',
        note: 'Fore and aft first, then across.',
      },
      {
        id: 'bore-top-right',
        item: 'Bore',
        position: 'right, top',
        unit: 'mm',
        standard: '48.00–48.02',
        limit: '48.10',
        found: '48.11',
        verdict: 'past the limit',
      },
    ],
    empty: 'Nothing to measure.',
  },
  caution: { type: 'caution', grade: 'NOTE', text: 'Left and right are as seen from the saddle.' },
  plot: {
    type: 'plot',
    title: 'Ring gap, left',
    description: 'Two readings of the ring gap of the left cylinder, rising towards the limit.',
    x: { label: 'date', kind: 'day' },
    y: { label: 'mm' },
    series: [
      {
        name: 'left',
        mark: 'dot',
        line: 'solid',
        points: [
          { x: 19800, y: 0.2, label: '0.20' },
          { x: 20100, y: 0.35 },
          { x: 20400, y: 0.42 },
        ],
      },
      {
        name: 'right',
        mark: 'triangle',
        line: 'dashed',
        points: [
          { x: 19800, y: 0.22 },
          { x: 20400, y: 0.3 },
        ],
      },
    ],
    limits: [{ name: 'limit', y: 0.6, line: 'dotted' }],
  },
  photo: {
    type: 'photo',
    file: 'photos/crown.jpg',
    caption: 'Left piston crown',
    alt: 'A piston seen from above',
    size: 'half',
  },
  cards: {
    type: 'cards',
    size: { width: 60, height: 120 },
    hole: true,
    cards: [
      { title: 'Bag 7', lines: ['Head nuts, four', 'washers, four'], code: 'PT-7', foot: '2026-11-01' },
      { title: 'Bag 8', lines: [[{ kind: 'strong', text: 'Shim 0.3' }, ' under the left bush']] },
    ],
  },
  grid: {
    type: 'grid',
    caption: 'Run log',
    columns: [
      { head: 'Time', width: 1 },
      { head: 'What was heard, seen, done', width: 5 },
    ],
    rows: 3,
    filled: [['0 min', 'fires, white smoke']],
  },
  drawing: {
    type: 'drawing',
    title: 'Timing strip',
    description: 'A strip of ten degrees.',
    size: { width: 40, height: 20 },
    marks: [
      { kind: 'line', x1: 0, y1: 4, x2: 40, y2: 4 },
      { kind: 'line', x1: 20, y1: 4, x2: 20, y2: 16, heavy: true },
      { kind: 'line', x1: 30, y1: 4, x2: 30, y2: 16, dashed: true },
      { kind: 'circle', x: 10, y: 10, radius: 3 },
      { kind: 'label', x: 20, y: 19, text: 'T', anchor: 'middle' },
    ],
  },
  signature: {
    type: 'signature',
    lines: [{ role: 'Left in this state by', name: 'A. Owner', date: '2026-11-01' }, { role: 'Checked by' }],
  },
  break: { type: 'break', to: 'back' },
  code: { type: 'code', text: 'PT1-04417/2026-11-top-end', caption: 'Machine and job' },
};

/** A page of all of them, beginning with the heading. */
export function samplePage(blocks: readonly Block[] = Object.values(sampleBlocks)): Page {
  return {
    file: 'jobs/2026-11-top-end.html',
    title: 'Top end',
    section: 'jobs',
    blocks,
    pdf: 'print/2026-11-top-end.pdf',
  };
}
