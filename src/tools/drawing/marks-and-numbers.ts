// Drawings of things that are read: numbers, labels, clocks, papers.
import { capLabel, clock } from './dials.ts';
import type { Drawing } from './drawing.ts';
import { box, circle, label, letters, line, path, shape } from './pen.ts';

export const marksAndNumbers: readonly Drawing[] = [
  {
    name: 'frame-number',
    title: 'Frame number, right of the headstock',
    marks: () => [
      path('M180 90 L330 90 L330 600 L180 600 Z', 4, '#f2f2f2'),
      path('M330 340 C500 370 760 420 940 520', 6),
      path('M330 480 C480 500 700 540 900 620', 6),
      box([380, 120], 520, 110, '#fff', 6),
      letters('LP175-04417', [640, 196], 66, 'middle'),
      label('struck by hand, the 7 deeper than the rest', [400, 300], [868, 222]),
    ],
  },
  {
    name: 'seller-note',
    title: "The seller's note",
    marks: () => [
      shape(
        [
          [180, 120],
          [820, 150],
          [800, 600],
          [160, 570],
        ],
        '#fafafa',
      ),
      line(
        [
          [180, 120],
          [500, 350],
          [820, 150],
        ],
        2,
      ),
      letters('parked when it started', [270, 420], 32),
      letters('to smoke and lost power', [270, 466], 32),
      letters('key with it', [270, 512], 32),
    ],
  },
  {
    name: 'two-clocks',
    title: 'Two clocks, 14 March 2026',
    marks: () => [
      clock([270, 320], '08214', 'out: stopped dead', 0),
      clock([730, 320], '23418', 'in: used, reads on from there', 0.02),
    ],
  },
  capLabel('cap-label', 'PUMP', 'petrol only', 'since 2026-04-11'),
  capLabel('cap-label-premix', 'PREMIX', '25 to 1', 'since 2025-06-07'),
  {
    name: 'feeler-blades',
    title: 'The two blades that I took for each other',
    marks: () => [
      shape(
        [
          [150, 220],
          [820, 170],
          [850, 205],
          [830, 235],
          [150, 290],
        ],
        '#f4f4f4',
      ),
      letters('0.35', [520, 242], 40),
      shape(
        [
          [150, 400],
          [820, 450],
          [850, 480],
          [825, 515],
          [150, 470],
        ],
        '#f4f4f4',
      ),
      letters('0.50', [520, 468], 40),
      circle([190, 345], 34, 4, '#fff'),
      box([110, 200], 150, 290, 'none', 30),
      label('measured with', [640, 110], [690, 180]),
      label('written down', [640, 600], [700, 515]),
    ],
  },
  {
    name: 'screw-card',
    title: 'A hole for every screw of the clutch cover',
    marks: () => [
      path('M230 150 C500 90 760 130 800 330 C820 520 600 600 400 580 C220 560 160 240 230 150 Z', 4, '#faf7f0'),
      ...(
        [
          [255, 175, 's'],
          [450, 125, 'l'],
          [650, 150, 's'],
          [775, 280, 'l'],
          [780, 430, 's'],
          [650, 550, 'l'],
          [470, 575, 's'],
          [300, 520, 'l'],
          [205, 350, 's'],
        ] as const
      ).map(([x, y, kind]) => circle([x, y], 15, 4, '#fff') + letters(kind === 'l' ? '45' : '30', [x + 24, y + 9], 26)),
      circle([520, 350], 165, 2),
      letters('clutch cover', [520, 340], 30, 'middle'),
      letters('M6, five of 30, four of 45', [520, 380], 24, 'middle'),
      label('shim on this shaft', [60, 640], [330, 470]),
      circle([345, 450], 22, 3),
    ],
  },
];
