// One drawing of the demo: a file name, a title, its marks. Every drawing says that it is one.
import { box, element, letters } from './pen.ts';
import type { Mark } from './pen.ts';

export interface Drawing {
  /** File name without `.png`. */
  readonly name: string;
  readonly title: string;
  readonly marks: () => readonly Mark[];
}

export const width = 1000;
export const height = 750;

/** The finished SVG: paper, frame, marks, title and the word "drawing". */
export function drawingSvg(drawing: Drawing): string {
  const paper = element('rect', { width, height, fill: '#fff' });
  const frame = box([18, 18], width - 36, height - 36);
  const words = letters(drawing.title, [44, 706], 30) + letters('drawing, not a photograph', [956, 706], 24, 'end');
  return element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width, height, viewBox: [0, 0, width, height].map(String).join(' ') },
    [paper, frame, ...drawing.marks(), words].join(''),
  );
}
