// Petrol to oil is a ratio: in words, or as a share of what is not said, no oil can be measured from it.
import type { Problem } from '../problem/problem.ts';
import type { Records } from './model.ts';
import { below } from './reference.ts';

/** The id of the setting that the mixing tables take. */
const mixture = 'premix';

/** A mixture that is written, and is not a ratio. */
export function checkMixture({ maker }: Records): readonly Problem[] {
  return maker.settings.flatMap(({ id, value, at }): readonly Problem[] => {
    if (id !== mixture || value.kind === 'unknown') return [];
    if (value.kind === 'read' && value.written.unit.dimension === 'ratio') return [];
    const text = value.kind === 'read' ? value.written.text : value.text;
    return [
      {
        code: 'mixture-not-a-ratio',
        severity: 'problem',
        at: below(at, 'value'),
        message: `“${text}” is not a ratio of petrol to oil.`,
        hint: 'Write parts of petrol to one of oil, for example 16:1 (half an imperial pint to the gallon), or ? while it is not known.',
      },
    ];
  });
}
