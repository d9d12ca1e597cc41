// A plot's primitives as operators.
import type { PlotItem } from '../layout/placed.ts';
import { drawPlot, type Primitive } from '../plots/plot.ts';
import { circle, point } from './draw-item.ts';
import { widthOf } from './faces.ts';
import { points } from './numbers.ts';
import type { Typesetter } from './type.ts';

/** Operators that draw a plot into its rectangle. */
export function plotOperators(item: PlotItem, type: Typesetter): string {
  const primitives = drawPlot(item.plot, { width: item.width, height: item.height });
  return primitives.map((primitive) => operators(primitive, item.x, item.y, type)).join('\n');
}

function operators(primitive: Primitive, x: number, y: number, type: Typesetter): string {
  if (primitive.kind === 'path') return path(primitive, x, y);
  if (primitive.kind === 'dot') return mark(primitive, x + primitive.x, y + primitive.y);
  const face = primitive.strong ? 'strong' : 'regular';
  const width = widthOf(primitive.text, face) * primitive.size;
  const back = primitive.anchor === 'end' ? width : primitive.anchor === 'middle' ? width / 2 : 0;
  return type.show(primitive.text + ' ', face, primitive.size, x + primitive.x - back, y + primitive.y);
}

/** Rules of the field are faint: a third of the black that may be spread over an area would not show as a hairline. */
const greys = { ink: '0 G', rule: '0.65 G', paper: '1 G' } as const;

function path(primitive: Extract<Primitive, { kind: 'path' }>, x: number, y: number): string {
  const drawn = moved(primitive.d, x, y);
  const { stroke, fill } = primitive;
  const filled = fill === undefined ? '' : (fill === 'paper' ? '1 g ' : '0 g ') + drawn + ' f 0 g ';
  if (stroke === undefined) return filled;
  const dash = '[' + (stroke.dash ?? []).map(points).join(' ') + '] 0 d ';
  return filled + greys[stroke.ink] + ' ' + points(stroke.width) + ' w ' + dash + drawn + ' S 0 G';
}

/** Path data of M, L and Z as operators. */
function moved(d: string, x: number, y: number): string {
  const steps = d.match(/[MLZ][^MLZ]*/g) ?? [];
  return steps.map((step) => operator(step, x, y)).join(' ');
}

function operator(step: string, x: number, y: number): string {
  if (step.startsWith('Z')) return 'h';
  const [dx = 0, dy = 0] = step.slice(1).trim().split(/[ ,]+/).map(Number);
  return point(x + dx, y + dy) + (step.startsWith('M') ? ' m' : ' l');
}

/** The four marks: filled dot, open square, open triangle, cross. */
function mark(dot: Extract<Primitive, { kind: 'dot' }>, x: number, y: number): string {
  const r = dot.size / 2;
  const open = '0.9 w [] 0 d 1 g ';
  if (dot.mark === 'dot') return '0 g ' + circle(x, y, r) + ' f';
  if (dot.mark === 'square')
    return (
      open +
      polygon([
        [x - r, y - r],
        [x + r, y - r],
        [x + r, y + r],
        [x - r, y + r],
      ]) +
      ' b 0 g'
    );
  if (dot.mark === 'triangle')
    return (
      open +
      polygon([
        [x, y - r],
        [x + r, y + r],
        [x - r, y + r],
      ]) +
      ' b 0 g'
    );
  const strokes = [
    point(x - r, y - r) + ' m',
    point(x + r, y + r) + ' l',
    point(x - r, y + r) + ' m',
    point(x + r, y - r) + ' l S',
  ];
  return '0.9 w [] 0 d ' + strokes.join(' ');
}

function polygon(corners: readonly (readonly [number, number])[]): string {
  return corners.map(([x, y], index) => point(x, y) + (index === 0 ? ' m' : ' l')).join(' ');
}
