// One plot for the tests of paper: two series, two limits.
import type { PlotBlock } from '../../src/sheet/sheet.ts';

export const plot: PlotBlock = {
  type: 'plot',
  title: 'Bore, right cylinder, bottom, across',
  description: 'Bore grows from 50.02 to 50.09 mm over 8 000 miles; the limit is 50.10 mm.',
  x: { label: 'date', kind: 'day' },
  y: { label: 'bore, mm' },
  series: [
    {
      name: 'right, bottom',
      mark: 'dot',
      line: 'solid',
      points: [
        { x: 19_900, y: 50.02, label: '50.02' },
        { x: 20_100, y: 50.05 },
        { x: 20_400, y: 50.06, label: '50.06' },
        { x: 20_700, y: 50.09, label: '50.09' },
      ],
    },
    {
      name: 'left, bottom',
      mark: 'triangle',
      line: 'dashed',
      points: [
        { x: 19_900, y: 50.01 },
        { x: 20_400, y: 50.03 },
        { x: 20_700, y: 50.04, label: '50.04' },
      ],
    },
  ],
  limits: [
    { name: 'service limit 50.10', y: 50.1, line: 'dashed' },
    { name: 'standard at most 50.02', y: 50.02, line: 'dotted' },
  ],
};
