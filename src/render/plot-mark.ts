// The marks of the points of a plot as SVG path data: told apart by shape, never by colour.
import type { Primitive } from '../plots/plot.ts';

type Dot = Extract<Primitive, { kind: 'dot' }>;

/** Path data of a mark, centred on its point. */
export function markPath({ mark, x, y, size }: Dot): string {
  const half = size / 2;
  switch (mark) {
    case 'dot':
      return `M${x - half} ${y}a${half} ${half} 0 1 0 ${size} 0a${half} ${half} 0 1 0 -${size} 0z`;
    case 'square':
      return `M${x - half} ${y - half}h${size}v${size}h-${size}z`;
    case 'triangle':
      return `M${x} ${y - half}l${half} ${size}h-${size}z`;
    case 'cross':
      return `M${x - half} ${y - half}l${size} ${size}m-${size} 0l${size} -${size}`;
  }
}
