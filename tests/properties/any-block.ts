// Any block of a sheet, with the words that records really hold and those that nobody should ever write.
import fc from 'fast-check';
import type { Block, Cell, Paragraph, Row, Text } from '../../src/sheet/sheet.ts';

const word = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.constantFrom(
      'head',
      'gasket',
      'nut',
      '8',
      '50.02',
      'mm',
      'M8',
      '×',
      '1.25',
      'Ölstand',
      'Łożysko',
      'ключ',
      'Ω',
      '≤',
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      '日本語の部品',
      'מספר',
      'رقم',
      '👩‍🔧',
      'a\u0301',
      '\u202eabc',
      '\u0007',
      '\t',
      '\n',
      '\ud800',
      '⚙',
    ),
  },
  { weight: 1, arbitrary: fc.string({ minLength: 1, maxLength: 12, unit: 'grapheme' }) },
  { weight: 1, arbitrary: fc.integer({ min: 60, max: 200 }).map((length) => 'PN-4417/'.repeat(30).slice(0, length)) },
);
export const plain = fc.array(word, { maxLength: 14 }).map((words) => words.join(' '));
const text: fc.Arbitrary<Text> = fc.oneof(
  plain,
  fc.array(
    fc.oneof(
      plain,
      fc.record({
        kind: fc.constantFrom('strong' as const, 'em' as const, 'code' as const, 'struck' as const),
        text: plain,
      }),
      fc.record({
        kind: fc.constant('figure' as const),
        text: fc.constantFrom('24.5 N·m', '0.35 mm'),
        mark: fc.constantFrom('M', 'maker'),
      }),
      fc.record({
        kind: fc.constant('link' as const),
        text: plain,
        to: fc.constantFrom('job:h1', 'h1', 'https://example.org'),
      }),
    ),
    { maxLength: 4 },
  ),
);
const grade = fc.constantFrom('WARNING' as const, 'CAUTION' as const, 'NOTE' as const);
const cell: fc.Arbitrary<Cell> = fc.record(
  {
    text,
    box: fc.constantFrom('tick' as const, 'write' as const, 'line' as const),
    done: fc.boolean(),
    unit: fc.constantFrom('mm', 'N·m', 'kgf·m'),
    big: fc.boolean(),
  },
  { requiredKeys: [] },
);
const row = (columns: number): fc.Arbitrary<Row> =>
  fc.oneof(
    {
      weight: 6,
      arbitrary: fc.record({
        kind: fc.constant('cells' as const),
        cells: fc.array(cell, { minLength: columns, maxLength: columns }),
      }),
    },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('band' as const), text }) },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('band' as const), text, grade }) },
  );
const table: fc.Arbitrary<Block> = fc.integer({ min: 1, max: 9 }).chain((columns) =>
  fc.record({
    type: fc.constant('table' as const),
    use: fc.constantFrom('work' as const, 'read' as const),
    empty: plain,
    columns: fc.array(
      fc.record({
        head: plain.map((head) => head.slice(0, 30)),
        width: fc.integer({ min: 1, max: 6 }),
        align: fc.constantFrom('left' as const, 'right' as const, 'centre' as const),
      }),
      { minLength: columns, maxLength: columns },
    ),
    rows: fc.array(row(columns), { maxLength: 12 }),
  }),
);
const paragraph: fc.Arbitrary<Paragraph> = fc.oneof(
  fc.record({ kind: fc.constant('paragraph' as const), text }),
  fc.record({ kind: fc.constant('heading' as const), level: fc.constantFrom(3 as const, 4 as const), text }),
  fc.record({ kind: fc.constant('code' as const), text: plain }),
  fc.record({
    kind: fc.constant('list' as const),
    ordered: fc.boolean(),
    items: fc.array(fc.array(fc.record({ kind: fc.constant('paragraph' as const), text }), { maxLength: 2 }), {
      maxLength: 4,
    }),
  }),
  fc.record({
    kind: fc.constant('quote' as const),
    paragraphs: fc.array(fc.record({ kind: fc.constant('paragraph' as const), text }), { maxLength: 2 }),
  }),
);
export const block: fc.Arbitrary<Block> = fc.oneof(
  { weight: 3, arbitrary: table },
  fc.record({
    type: fc.constant('heading' as const),
    level: fc.constantFrom(1 as const, 2 as const, 3 as const),
    text,
    id: fc.constant('h1'),
  }),
  fc.record({ type: fc.constant('prose' as const), paragraphs: fc.array(paragraph, { maxLength: 5 }) }),
  fc.record({
    type: fc.constant('facts' as const),
    across: fc.constantFrom(1 as const, 2 as const, 3 as const),
    facts: fc.array(fc.record({ name: plain, value: text }), { maxLength: 6 }),
  }),
  fc.record({ type: fc.constant('caution' as const), grade, text: plain }),
  fc.record({
    type: fc.constant('checklist' as const),
    items: fc.array(
      fc.record(
        {
          id: fc.constant('c'),
          text,
          why: text,
          state: plain,
          blank: fc.record({ unit: fc.constantFrom('mm', 'bar', 'turns out from seated'), hint: plain }),
        },
        { requiredKeys: ['id', 'text'] },
      ),
      { maxLength: 6 },
    ),
  }),
  fc.record({
    type: fc.constant('blanks' as const),
    empty: plain,
    items: fc.array(
      fc.record(
        {
          id: fc.constant('b'),
          item: text,
          position: plain,
          unit: fc.constantFrom('mm', 'thou', 'kgf·m'),
          standard: plain,
          limit: plain,
          last: plain,
          expected: plain,
          found: plain,
          left: plain,
          verdict: plain,
          note: text,
        },
        { requiredKeys: ['id', 'item', 'unit'] },
      ),
      { maxLength: 5 },
    ),
  }),
  fc.record({
    type: fc.constant('plot' as const),
    title: plain,
    description: plain,
    x: fc.record({ label: fc.constant('date'), kind: fc.constantFrom('day' as const, 'number' as const) }),
    y: fc.record({ label: fc.constant('mm') }),
    series: fc.array(
      fc.record({
        name: fc.constantFrom('left', 'right, bottom'),
        mark: fc.constantFrom('dot' as const, 'square' as const, 'triangle' as const, 'cross' as const),
        line: fc.constantFrom('solid' as const, 'dashed' as const, 'none' as const),
        points: fc.array(
          fc.record({
            x: fc.integer({ min: 0, max: 30_000 }),
            y: fc.float({ min: -50, max: 50, noNaN: true }),
            label: fc.constantFrom('a', '50.02', ''),
          }),
          { maxLength: 12 },
        ),
      }),
      { maxLength: 3 },
    ),
    limits: fc.array(
      fc.record({
        name: fc.constantFrom('service limit 50.10', 'standard'),
        y: fc.float({ min: -60, max: 60, noNaN: true }),
        line: fc.constant('dashed' as const),
      }),
      { maxLength: 3 },
    ),
  }),
  fc.record({
    type: fc.constant('drawing' as const),
    title: plain,
    description: plain,
    size: fc.record({ width: fc.integer({ min: 1, max: 400 }), height: fc.integer({ min: 1, max: 400 }) }),
    marks: fc.array(
      fc.record({
        kind: fc.constant('circle' as const),
        x: fc.constant(0.5),
        y: fc.constant(0.5),
        radius: fc.constant(0.4),
      }),
      { maxLength: 3 },
    ),
  }),
  fc.record({
    type: fc.constant('photo' as const),
    file: plain,
    caption: text,
    alt: plain,
    size: fc.constantFrom('full' as const, 'half' as const, 'small' as const),
    width: fc.integer({ min: 1, max: 4000 }),
    height: fc.integer({ min: 1, max: 4000 }),
  }),
  fc.record({
    type: fc.constant('cards' as const),
    size: fc.constantFrom({ width: 60, height: 120 }, { width: 86, height: 54 }),
    hole: fc.boolean(),
    cards: fc.array(
      fc.record(
        { title: plain, lines: fc.array(text, { maxLength: 5 }), code: fc.constant('pipit/A1'), foot: plain },
        { requiredKeys: ['title', 'lines'] },
      ),
      { maxLength: 5 },
    ),
  }),
  fc.record({
    type: fc.constant('grid' as const),
    columns: fc.array(
      fc.record({ head: fc.constantFrom('minute', 'choke', 'note'), width: fc.integer({ min: 1, max: 4 }) }),
      { minLength: 1, maxLength: 8 },
    ),
    rows: fc.integer({ min: 0, max: 30 }),
  }),
  fc.record({
    type: fc.constant('signature' as const),
    lines: fc.array(fc.record({ role: plain, name: plain, date: plain }, { requiredKeys: ['role'] }), { maxLength: 3 }),
  }),
  fc.record({
    type: fc.constant('code' as const),
    text: fc.constantFrom('pipit/jobs/a', 'x'.repeat(120)),
    caption: plain,
  }),
  fc.record({ type: fc.constant('break' as const), to: fc.constantFrom('page' as const, 'back' as const) }),
);
