// Drawings of the machine in its surroundings.
import type { Drawing } from './drawing.ts';
import { box, circle, label, letters, line, path, placed, rungs, shape, turned } from './pen.ts';
import { pipit } from './pipit.ts';

const boards = (): string =>
  Array.from({ length: 12 }, (_, n) =>
    line(
      [
        [60 + n * 80, 60],
        [60 + n * 80, 560],
      ],
      1,
    ),
  ).join('');

const waves = (): string =>
  Array.from({ length: 5 }, (_, n) =>
    path('M' + [620, 470 + n * 34].map(String).join(' ') + ' q25 -14 50 0 t50 0 t50 0 t50 0 t50 0 t50 0 t50 0', 2),
  ).join('');

export const outdoors: readonly Drawing[] = [
  {
    name: 'boathouse',
    title: 'In the boathouse, 4 May 2024',
    marks: () => [
      boards(),
      line([
        [40, 560],
        [960, 560],
      ]),
      path('M700 420 C760 520 900 520 950 420 Z', 4, '#f4f4f4'),
      line(
        [
          [700, 420],
          [950, 420],
        ],
        5,
      ),
      placed(turned(pipit(), 2, [300, 330]), [110, 210], 1.05),
      path('M430 320 C480 250 640 270 690 400 L700 480 C640 430 560 420 500 440 Z', 3, '#ededed'),
      label('tarpaulin', [620, 250], [600, 330]),
      label('dinghy', [820, 380], [830, 425]),
      label('flat', [150, 640], [210, 560]),
    ],
  },
  {
    name: 'as-found-left',
    title: 'Left side as found',
    marks: () => [
      line([
        [60, 600],
        [940, 600],
      ]),
      placed(pipit(), [130, 140], 1.38),
      label('side panel cracked here', [900, 190], [722, 350], 'end'),
      label('chain rusted', [690, 650], [720, 480]),
      label('screws never touched', [330, 660], [520, 470]),
    ],
  },
  {
    name: 'air-box-nest',
    title: 'What lived in the air box',
    marks: () => [
      box([200, 160], 600, 400, '#f6f6f6', 18),
      box([240, 200], 240, 320, '#fff', 10),
      rungs([256, 220], [464, 500], 12, 1),
      ...Array.from({ length: 46 }, (_, n) => {
        const x = 520 + ((n * 67) % 220);
        const y = 330 + ((n * 41) % 180);
        return path('M' + [x, y].map(String).join(' ') + ' q30 -40 70 -6', 2);
      }),
      circle([640, 420], 60, 2, '#fff'),
      label('element, in crumbs', [250, 130], [330, 200]),
      label('nest: wetted, then out by hand', [500, 600], [640, 480]),
    ],
  },
  {
    name: 'by-the-water',
    title: 'By the water, 6 September 2025',
    marks: () => [
      path('M40 330 C200 270 380 300 560 330 C700 350 860 320 960 300', 2),
      waves(),
      shape([
        [620, 300],
        [620, 150],
        [760, 90],
        [900, 150],
        [900, 300],
      ]),
      box([700, 200], 120, 100),
      line([
        [40, 620],
        [960, 620],
      ]),
      placed(pipit(false), [60, 300], 0.97),
      letters('500 miles since the rebore', [80, 200], 28),
    ],
  },
];
