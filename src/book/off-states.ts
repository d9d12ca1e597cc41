// Off and on: which verb opens what state, and which verbs close it.
import type { Verb } from '../records/model.ts';
import type { OpenLine } from './book.ts';

export type OffState = OpenLine['state'];

/** The state a verb leaves behind. `lost` closes the bag's line and leaves the place empty: the part is still off. */
const opens: Partial<Readonly<Record<Verb, OffState>>> = {
  removed: 'off',
  lost: 'off',
  loosened: 'loose',
  drained: 'empty',
  disconnected: 'disconnected',
  opened: 'open',
  'sent out': 'sent out',
  'fitted temporarily': 'temporary',
};

/** The state a verb ends. */
const closes: Partial<Readonly<Record<Verb, OffState>>> = {
  refitted: 'off',
  replaced: 'off',
  lost: 'off',
  tightened: 'loose',
  filled: 'empty',
  connected: 'disconnected',
  closed: 'open',
  'come back': 'sent out',
  'taken away': 'temporary',
};

export function opensState(verb: Verb): OffState | undefined {
  return opens[verb];
}

export function closesState(verb: Verb): OffState | undefined {
  return closes[verb];
}

const words: Readonly<Record<OffState, string>> = {
  off: 'off',
  loose: 'loose',
  empty: 'drained',
  disconnected: 'disconnected',
  open: 'open',
  'sent out': 'sent out',
  temporary: 'fitted for the time being',
};

/** Every state, in no order. */
export const offStates: readonly OffState[] = [...new Set(Object.values(opens))];

/** The state as a sentence says it. */
export function stateInWords(state: OffState): string {
  return words[state];
}
