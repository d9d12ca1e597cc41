// A history of any length, invented word by word: prose, a table and a plot for every record.
import type { Block } from '../../src/sheet/sheet.ts';
import { plot } from './sample-plot.ts';

/** Many pages of history: prose, a table and a plot for every record. */
export function longHistory(records: number): readonly Block[] {
  const stems = [
    'gear',
    'pin',
    'rod',
    'seal',
    'hub',
    'cam',
    'jet',
    'clip',
    'fork',
    'lamp',
    'coil',
    'shim',
    'stud',
    'ring',
    'chain',
    'cable',
  ];
  const word = (seed: number): string => {
    const value = (seed * 2_654_435_761) >>> 0;
    const first = stems[value % 16] ?? '';
    return value % 7 === 0
      ? String(value % 9000) + '.' + String(value % 10)
      : first + (stems[(value >>> 4) % 16] ?? '') + (value % 3 === 0 ? 's' : '');
  };
  const text = (seed: number, count: number): string =>
    Array.from({ length: count }, (_, index) => word(seed * 1009 + index)).join(' ') + '.';
  return Array.from({ length: records }, (_, index): readonly Block[] => {
    const id = 'record-' + String(index);
    return [
      { type: 'heading', level: 2, id, text: 'Record ' + String(index) },
      {
        type: 'facts',
        across: 2,
        facts: [
          { name: 'date', value: '2024-05-04' },
          { name: 'odometer', value: String(index) + ' mi' },
        ],
      },
      {
        type: 'prose',
        paragraphs: [
          { kind: 'paragraph', text: text(index * 3, 90) },
          {
            kind: 'paragraph',
            text: [
              text(index * 3 + 1, 60),
              ' See ',
              { kind: 'link', text: 'the record before', to: 'record-' + String(Math.max(0, index - 1)) },
              '.',
            ],
          },
          { kind: 'paragraph', text: text(index * 3 + 2, 70) },
        ],
      },
      {
        type: 'table',
        use: 'read',
        empty: 'None.',
        columns: ['item', 'position', 'value', 'limit', 'verdict'].map((head) => ({ head, width: 1 })),
        rows: Array.from({ length: 6 }, (_row, at) => ({
          kind: 'cells' as const,
          cells: Array.from({ length: 5 }, (_cell, column) => ({ text: word(index * 31 + at * 5 + column) })),
        })),
      },
      { ...plot, title: 'Bore at record ' + String(index) },
    ];
  }).flat();
}
