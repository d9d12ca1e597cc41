// Drawings of the engine apart: heads, bores, studs, and where to measure.
import type { Drawing } from './drawing.ts';
import { box, circle, label, letters, line, path, rungs, shape } from './pen.ts';
import type { Mark, Point } from './pen.ts';

const studs = (at: Point): readonly Point[] => [
  [at[0] - 130, at[1] - 120],
  [at[0] + 130, at[1] - 120],
  [at[0] - 130, at[1] + 120],
  [at[0] + 130, at[1] + 120],
];

const nut = ([x, y]: Point, words: string): Mark =>
  circle([x, y], 34, 4, '#fff') + letters(words, [x, y + 13], 38, 'middle');

function deck(at: Point): Mark {
  return box([at[0] - 190, at[1] - 180], 380, 360, '#f2f2f2', 30) + circle(at, 100, 4, '#fff');
}

function section(x: number): Mark {
  return [
    shape(
      [
        [x, 130],
        [x + 60, 130],
        [x + 60, 560],
        [x, 560],
      ],
      '#e4e4e4',
    ),
    shape(
      [
        [x + 300, 130],
        [x + 360, 130],
        [x + 360, 560],
        [x + 300, 560],
      ],
      '#e4e4e4',
    ),
    rungs([x - 50, 150], [x, 420], 8, 4),
    rungs([x + 360, 150], [x + 410, 420], 8, 4),
  ].join('');
}

const across = (y: number, words: string): Mark =>
  line(
    [
      [380, y],
      [620, y],
    ],
    2,
  ) +
  shape(
    [
      [380, y],
      [398, y - 8],
      [398, y + 8],
    ],
    '#111',
    1,
  ) +
  shape(
    [
      [620, y],
      [602, y - 8],
      [602, y + 8],
    ],
    '#111',
    1,
  ) +
  letters(words, [500, y - 12], 26, 'middle');

export const engineParts: readonly Drawing[] = [
  {
    name: 'head-off',
    title: 'Heads off: what the crowns say',
    marks: () => [
      deck([270, 340]),
      deck([730, 340]),
      ...[...studs([270, 340]), ...studs([730, 340])].map((at) => circle(at, 16, 4, '#fff')),
      circle([270, 340], 92, 1, '#f4f4f4'),
      circle([730, 340], 92, 1, '#555'),
      path('M200 300 L190 390 M210 290 L202 396', 3),
      letters('left', [270, 130], 32, 'middle'),
      letters('right', [730, 130], 32, 'middle'),
      label('dry, grey', [210, 600], [270, 400]),
      label('black, damp', [670, 600], [730, 430]),
      label('scored', [60, 560], [198, 380]),
    ],
  },
  {
    name: 'bore-positions',
    title: 'Six readings: three heights, two ways',
    marks: () => [
      section(320),
      across(190, 'top'),
      across(340, 'middle'),
      across(490, 'bottom'),
      circle([850, 260], 90, 4),
      line(
        [
          [850, 150],
          [850, 370],
        ],
        2,
      ),
      line(
        [
          [740, 260],
          [960, 260],
        ],
        2,
      ),
      letters('fore-aft', [850, 140], 24, 'middle'),
      letters('across', [850, 400], 24, 'middle'),
      letters('largest bore less skirt', [60, 620], 26),
      letters('is the clearance', [60, 652], 26),
    ],
  },
  {
    name: 'head-nut-order',
    title: 'Head nuts: from inside outwards, crosswise',
    marks: () => [
      deck([270, 350]),
      deck([730, 350]),
      ...studs([270, 350]).map((at, n) => nut(at, ['5', '1', '7', '3'][n] ?? '')),
      ...studs([730, 350]).map((at, n) => nut(at, ['4', '8', '2', '6'][n] ?? '')),
      path('M500 130 L500 70 M485 90 L500 66 L515 90', 4),
      letters('front', [530, 100], 28),
      letters('1.1, then 2.2 kgf·m, dry, cold', [500, 630], 30, 'middle'),
    ],
  },
  {
    name: 'insert-map',
    title: 'Map of repaired threads: one, so far',
    marks: () => [
      path('M120 180 L880 180 L860 560 L140 560 Z', 4, '#f6f6f6'),
      circle([320, 370], 100, 4, '#fff'),
      circle([680, 370], 100, 4, '#fff'),
      ...[...studs([320, 370]), ...studs([680, 370])].map((at) => circle(at, 16, 4, '#fff')),
      circle([450, 490], 30, 6),
      circle([450, 490], 22, 2),
      circle([450, 490], 16, 2, '#999'),
      label('wire thread insert M8 × 1.25', [470, 640], [455, 522]),
      path('M500 150 L500 100 M487 118 L500 98 L513 118', 4),
      letters('front', [530, 128], 28),
      letters('left', [320, 380], 28, 'middle'),
      letters('right', [680, 380], 28, 'middle'),
    ],
  },
];
