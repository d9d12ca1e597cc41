// The Pipit from its left side, as the drawings show it: 600 wide, 330 high, standing on its own base line.
import { box, circle, line, path, rungs } from './pen.ts';
import type { Mark, Point } from './pen.ts';

const grey = '#e4e4e4';

function wheel(hub: Point): Mark {
  const spokes = Array.from({ length: 12 }, (_, n) => {
    const angle = (n * Math.PI) / 6;
    return line([hub, [hub[0] + 80 * Math.cos(angle), hub[1] + 80 * Math.sin(angle)]], 1);
  });
  return circle(hub, 95, 9) + circle(hub, 80, 2) + circle(hub, 24, 3, '#fff') + spokes.join('');
}

/** The engine with its finned barrels, seen from the left. */
export function engine(): Mark {
  return (
    path('M235 225 C235 285 400 290 405 245 C405 220 370 215 330 220 L245 218 Z', 3, grey) +
    box([258, 150], 62, 70, '#fff') +
    rungs([248, 156], [330, 214], 7, 4) +
    path('M252 148 L266 128 L312 128 L326 148 Z', 3, '#fff') +
    line(
      [
        [289, 128],
        [289, 112],
      ],
      6,
    ) +
    circle([300, 250], 26)
  );
}

/** The whole machine; `panel` leaves the left side panel away when false. */
export function pipit(panel = true): Mark {
  const hubs: readonly Point[] = [
    [105, 235],
    [495, 235],
  ];
  const side = panel ? path('M382 142 L452 142 L440 205 L388 205 Z', 3, '#fff') : '';
  return [
    ...hubs.map(wheel),
    path('M15 205 C25 120 150 105 200 180', 6),
    path('M400 190 C430 115 560 120 590 205', 6),
    line(
      [
        [105, 235],
        [172, 70],
      ],
      10,
    ),
    line(
      [
        [172, 95],
        [222, 268],
        [400, 272],
      ],
      7,
    ),
    line(
      [
        [178, 105],
        [470, 142],
        [392, 270],
      ],
      7,
    ),
    line(
      [
        [396, 248],
        [495, 235],
      ],
      9,
    ),
    line(
      [
        [470, 140],
        [488, 228],
      ],
      10,
    ),
    engine(),
    path('M186 108 C196 58 300 52 336 104 L326 124 L204 128 Z', 3, '#fff'),
    path('M334 104 C380 90 450 92 500 112 L494 132 L342 128 Z', 3, '#444'),
    side,
    path('M258 190 C220 200 225 268 262 276 L350 276', 7),
    path('M350 268 L560 258 L566 280 L350 286 Z', 3, '#fff'),
    circle([140, 96], 24, 3, '#fff'),
    path('M168 74 C176 48 190 40 222 44', 6),
    line(
      [
        [330, 286],
        [300, 328],
        [350, 328],
      ],
      5,
    ),
  ].join('');
}
