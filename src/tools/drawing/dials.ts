// Round things that are read: a speedometer, the label on a tank cap.
import type { Drawing } from './drawing.ts';
import { box, circle, letters, line } from './pen.ts';
import type { Mark, Point } from './pen.ts';

/** A speedometer with its counter; `needle` is the part of half a turn past its stop. */
export function clock(at: Point, reading: string, words: string, needle: number): Mark {
  const ticks = Array.from({ length: 13 }, (_, n) => {
    const angle = Math.PI * (0.75 + n * 0.125);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return line(
      [
        [at[0] + 140 * cos, at[1] + 140 * sin],
        [at[0] + 162 * cos, at[1] + 162 * sin],
      ],
      4,
    );
  });
  const angle = Math.PI * (0.75 + needle);
  return [
    circle(at, 190, 8),
    circle(at, 172, 2),
    ...ticks,
    line([at, [at[0] + 125 * Math.cos(angle), at[1] + 125 * Math.sin(angle)]], 7),
    circle(at, 14, 3, '#fff'),
    box([at[0] - 85, at[1] + 45], 170, 50, '#fff'),
    letters(reading, [at[0], at[1] + 82], 36, 'middle'),
    letters('miles', [at[0], at[1] - 40], 24, 'middle'),
    letters(words, [at[0], at[1] + 240], 28, 'middle'),
  ].join('');
}

/** The label on the tank cap: how it is oiled, what goes in, since when. */
export function capLabel(name: string, how: string, what: string, since: string): Drawing {
  return {
    name,
    title: 'The label on the tank cap',
    marks: () => [
      circle([500, 350], 260, 8, '#f2f2f2'),
      circle([500, 350], 226, 3, '#fff'),
      letters(how, [500, 310], 78, 'middle'),
      line(
        [
          [330, 345],
          [670, 345],
        ],
        4,
      ),
      letters(what, [500, 408], 56, 'middle'),
      letters(since, [500, 464], 30, 'middle'),
    ],
  };
}
