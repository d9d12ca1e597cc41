// Diameters and stress area of a thread: ISO metric and Unified (60°), Whitworth form (55°), Cycle (60°).
import { millimetre, squareMillimetre } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { result, words } from './input.ts';
import { readThread } from './thread.ts';
import type { Thread } from './thread.ts';

/** Height of the fundamental triangle of a 60° thread. H = √3/2 · P (ISO 68-1), in the unit of the pitch. */
export function triangleHeight(pitch: number): number {
  return (Math.sqrt(3) / 2) * pitch;
}

/** Depth of a thread over its pitch: Whitworth 0.640327 (BS 84), Cycle 0.5327 (BS 811). */
export const whitworthDepth = 0.640327;
export const cycleDepth = 0.5327;

function depth(thread: Thread): number | undefined {
  if (thread.angle === 55) return whitworthDepth * thread.pitch;
  return thread.series === 'BSC' ? cycleDepth * thread.pitch : undefined;
}

/** Effective (pitch) diameter, mm. d₂ = d − 0.75 H for 60° threads, d − h for Whitworth and Cycle. */
export function pitchDiameter(thread: Thread): number {
  return thread.diameter - (depth(thread) ?? 0.75 * triangleHeight(thread.pitch));
}

/** Core diameter of the bolt, mm. d₃ = d − 17/12 H for 60° threads (ISO 898-1 root), d − 2 h for Whitworth and Cycle. */
export function rootDiameter(thread: Thread): number {
  const deep = depth(thread);
  return thread.diameter - (deep === undefined ? (17 / 12) * triangleHeight(thread.pitch) : 2 * deep);
}

/** Minor diameter of the nut, mm. D₁ = d − 1.25 H for 60° threads, the core diameter for Whitworth and Cycle. */
export function minorDiameter(thread: Thread): number {
  const deep = depth(thread);
  return thread.diameter - (deep === undefined ? 1.25 * triangleHeight(thread.pitch) : 2 * deep);
}

/**
 * Tensile stress area, mm². Metric: π/4 · ((d₂+d₃)/2)² (ISO 898-1). Unified: π/4 · (d − 0.9743 P)² (FED-STD-H28). Whitworth and
 * Cycle: the mean of effective and core diameter, our choice after the same principle, since no standard prints one.
 * @example stressArea of M8 // 36.61
 */
export function stressArea(thread: Thread): number {
  const unified = thread.series === 'UNC' || thread.series === 'UNF' || thread.series === 'UN';
  const across = unified ? thread.diameter - 0.9743 * thread.pitch : (pitchDiameter(thread) + rootDiameter(thread)) / 2;
  return (Math.PI / 4) * across ** 2;
}

/** The stress area as ISO 898-1 prints it, to three figures; its proof and breaking loads are built on the printed one. */
export function nominalArea(thread: Thread): number {
  const area = stressArea(thread);
  return thread.series === 'M' ? Number(area.toPrecision(3)) : area;
}

export const threadGeometry = calculation({
  id: 'thread-geometry',
  name: 'Thread geometry',
  purpose: 'The pitch, core and stress area of a thread, to know it and to know what it carries.',
  formula: 'H = √3/2 · P;  d₂ = d − 0.75 H;  D₁ = d − 1.25 H;  d₃ = d − 17/12 H;  Aₛ = π/4 · ((d₂ + d₃)/2)²',
  inputs: { thread: words('', 'thread') },
  outputs: {
    diameter: result('d', 'major diameter', millimetre, 3),
    pitch: result('P', 'pitch', millimetre, 4),
    'pitch diameter': result('d₂', 'effective (pitch) diameter', millimetre, 3),
    'minor diameter': result('D₁', 'minor diameter of the nut', millimetre, 3),
    'root diameter': result('d₃', 'core diameter of the bolt', millimetre, 3),
    'stress area': result('Aₛ', 'stress area', squareMillimetre, 2),
    'nominal area': result('Aₛ,nom', 'stress area to three figures', squareMillimetre, 2),
    'triangle height': result('H', 'height of the fundamental triangle', millimetre, 6),
  },
  range:
    'ISO metric, Unified, Whitworth form and Cycle threads. For Whitworth form h = 0.640327 P, for Cycle 0.5327 P.',
  source:
    'ISO 68-1, ISO 724, ISO 898-1; FED-STD-H28; BS 84; BS 811 (form from memory). No stress area is published for BS 84 and BS 811: the mean of effective and core diameter is our choice.',
  tables: ['values-thread-geometry', 'values-fastener-strength', 'metric-threads', 'inch-threads'],
  cautions: ['aluminium-thread'],
  example: {
    given: { thread: 'M8' },
    gives: { 'pitch diameter': '7.188 mm', 'root diameter': '6.466 mm', 'stress area': '36.61 mm²' },
  },
  work: (given) => {
    const thread = readThread(given.words('thread'));
    if (thread === undefined) {
      given.doubt(
        'calculation-value-wrong',
        '“' + given.words('thread') + '” names no thread known here; write M8x1.25 or 1/4-26 BSF',
      );
      return {};
    }
    return {
      diameter: thread.diameter,
      pitch: thread.pitch,
      'pitch diameter': pitchDiameter(thread),
      'minor diameter': minorDiameter(thread),
      'root diameter': rootDiameter(thread),
      'stress area': stressArea(thread),
      'nominal area': nominalArea(thread),
      'triangle height': triangleHeight(thread.pitch),
    };
  },
});
