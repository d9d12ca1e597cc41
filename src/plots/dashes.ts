// The three patterns of a line: lines are told apart by pattern, never by colour.

/** Lengths of dash and gap in points; an empty list is a solid line. */
export function dashes(line: 'solid' | 'dashed' | 'dotted'): readonly number[] {
  if (line === 'dashed') return [5, 3];
  if (line === 'dotted') return [1.2, 2.6];
  return [];
}
