// Drawings of work at the bench: carburettor, points, bottle, pressure test.
import type { Drawing } from './drawing.ts';
import { box, circle, label, letters, line, path, placed, rungs, shape } from './pen.ts';
import { engine } from './pipit.ts';

export const bench: readonly Drawing[] = [
  {
    name: 'carburettor-parts',
    title: 'Left carburettor, in the order it comes apart',
    marks: () => [
      path('M120 140 L200 140 L190 200 L130 200 Z', 3, '#f2f2f2'),
      rungs([145, 215], [175, 300], 8, 3),
      box([290, 150], 80, 150, '#fff', 6),
      line(
        [
          [330, 300],
          [330, 400],
        ],
        4,
      ),
      box([460, 170], 190, 110, '#f2f2f2', 14),
      circle([650, 225], 55, 4, '#fff'),
      box([500, 280], 110, 50, '#fff'),
      circle([780, 220], 44, 3),
      circle([860, 220], 44, 3),
      path('M770 400 L870 400 L855 500 L785 500 Z', 3, '#fff'),
      box([200, 470], 26, 60, '#fff'),
      box([290, 470], 20, 70, '#fff'),
      shape(
        [
          [390, 470],
          [410, 470],
          [400, 540],
        ],
        '#fff',
      ),
      label('top, spring', [90, 120], [150, 150]),
      label('slide, needle in its third groove', [240, 440], [330, 400]),
      label('body', [520, 150], [540, 172]),
      label('floats', [790, 150], [820, 178]),
      label('bowl', [790, 560], [820, 500]),
      letters('main 85', [165, 570], 26),
      letters('pilot 22', [270, 600], 26),
      letters('float valve', [380, 570], 26),
    ],
  },
  {
    name: 'points',
    title: 'Left points as found',
    marks: () => [
      circle([500, 360], 240, 4, '#f6f6f6'),
      circle([500, 360], 50, 4, '#fff'),
      path('M470 318 C500 300 530 310 546 340', 4),
      path('M330 250 L520 250 L540 290', 9),
      path('M560 200 L640 200 L640 280 L560 280 Z', 3, '#e4e4e4'),
      path('M540 240 L560 240', 14),
      circle([360, 250], 14, 4, '#fff'),
      circle([380, 480], 12, 3),
      circle([620, 480], 12, 3),
      label('pitted, grey', [640, 130], [556, 232]),
      label('heel worn', [140, 420], [500, 300]),
      label('plate screws', [640, 640], [622, 494]),
      letters('0.20 mm at full lift', [60, 640], 28),
    ],
  },
  {
    name: 'bottle-rigged',
    title: 'Temporary bottle, 250 ml at 25:1',
    marks: () => [
      line(
        [
          [160, 90],
          [640, 90],
        ],
        9,
      ),
      line(
        [
          [400, 90],
          [400, 140],
        ],
        2,
      ),
      path('M350 140 L450 140 L450 320 L425 360 L375 360 L350 320 Z', 3, '#fafafa'),
      line(
        [
          [350, 210],
          [450, 210],
        ],
        2,
      ),
      box([382, 360], 36, 40, '#fff'),
      line(
        [
          [360, 380],
          [440, 380],
        ],
        6,
      ),
      path('M400 400 C430 425 585 390 562 502', 6),
      box([545, 500], 30, 34, '#ddd'),
      placed(engine(), [182, 310], 1.1),
      label('tied up, clear of pipe and lead', [520, 170], [452, 200]),
      label('tap in reach', [520, 360], [442, 382]),
      label('hose clamped', [660, 600], [578, 524]),
    ],
  },
  {
    name: 'pressure-test',
    title: 'Crankcase pressure test',
    marks: () => [
      placed(engine(), [60, 60], 1.7),
      circle([770, 260], 90, 5, '#fff'),
      line(
        [
          [770, 260],
          [720, 210],
        ],
        5,
      ),
      letters('0.4 bar', [770, 320], 26, 'middle'),
      box([700, 480], 60, 110, '#f2f2f2', 10),
      line(
        [
          [730, 480],
          [730, 420],
        ],
        7,
      ),
      path('M770 350 C770 420 640 420 600 380', 6),
      path('M760 540 C840 540 850 430 800 346', 5),
      box([560, 350], 46, 56, '#bbb', 6),
      circle([498, 494], 10, 2),
      circle([516, 512], 14, 2),
      circle([488, 524], 8, 2),
      label('low gauge', [700, 130], [770, 170]),
      label('bung in the inlet', [200, 200], [560, 372]),
      label('bubbles here: left seal', [200, 640], [498, 520]),
      letters('hand pump, no air line', [660, 640], 26),
    ],
  },
];
