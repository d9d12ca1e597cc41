// content/faults: causes, tests with their outcomes, and what outcomes say together. A machine folder may add some of its own.
import {
  cardParts,
  faultGroups,
  hazards,
  likelihoods,
  type FaultCause,
  type FaultOutcome,
  type FaultTables,
  type FaultTest,
  type FaultTogether,
  type ReadingRule,
} from '../fault-model.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { entry, group, may, need, or, wholeFile } from '../shapes/fields.ts';
import { choice, id, list, number, text, yesNo } from '../shapes/plain.ts';
import type { Shape } from '../shapes/shape.ts';
import { applies } from './applies.ts';

const strengths = {
  shows: or(list(id), [], 'causes that are seen by it'),
  stronglyFor: or(list(id), [], 'causes it speaks for strongly'),
  for: or(list(id), [], 'causes it speaks for'),
  against: or(list(id), [], 'causes it speaks against'),
  stronglyAgainst: or(list(id), [], 'causes it speaks against strongly'),
  excludes: or(list(id), [], 'causes that it rules out'),
};

const cause: Shape<FaultCause> = entry({
  id: need(id, 'its permanent id', { example: 'points-dirty' }),
  mark: may(id, 'a short mark', { example: 'E3' }),
  group: need(choice(...faultGroups), 'the group it is ranked in', { example: 'ignition' }),
  cause: need(text, 'what is wrong', { example: 'points oxidised or oily' }),
  short: may(text, 'the same in two or three words'),
  longStored: need(choice(...likelihoods), 'how likely on a machine that has stood for years', { example: 'likely' }),
  latelyRunning: need(choice(...likelihoods), 'how likely on one that ran lately', { example: 'occasional' }),
  cure: need(text, 'the usual cure', { example: 'Filed flat, cleaned with dry card' }),
  effort: or(choice('minutes', 'an hour', 'an evening', 'days'), 'an hour', 'how long the cure takes'),
  curedBy: or(list(text), [], 'things of work or settings after which it is less likely'),
  movedBy: or(list(text), [], 'things of work or settings that may bring it about'),
  applies: or(applies, {}, 'machines it is for'),
});

const reads: Shape<ReadingRule> = group({
  items: need(list(id), 'limits, settings or readings', { example: '[points-gap]' }),
  side: need(choice('within', 'past', 'below', 'above', 'outside'), 'where the value lies', { example: 'outside' }),
  without: or(list(text), [], 'conditions of a reading that is not meant'),
  left: or(yesNo, true, 'whether what was left counts as well as what was found'),
});

const outcome: Shape<FaultOutcome> = entry({
  saw: need(id, 'its permanent id within the test', { example: 'dirty' }),
  also: or(list(id), [], 'other names for it'),
  words: need(text, 'what is seen', { example: '"Grey, oxidised or oily"' }),
  usual: need(number(0, 100), 'of a hundred engines without any of the causes, how many show it', { example: '20' }),
  running: or(yesNo, false, 'seen on a running engine'),
  stop: or(yesNo, false, 'the engine is not to be run so'),
  means: may(text, 'what it means, where the causes do not say it'),
  note: may(text, 'a note'),
  caution: may(id, 'id of a caution'),
  card: may(choice(...cardParts), 'part of the no-start card it stands in'),
  phrases: or(list(text), [], 'words of a finding or a run log that say it'),
  checks: or(list(id), [], 'checks that say it while they are proved'),
  reads: may(reads, 'readings that say it'),
  notWith: or(list(text), [], '`test=outcome` that cannot be so as well'),
  ...strengths,
  applies: or(applies, {}, 'machines it is for'),
});

const test: Shape<FaultTest> = entry({
  id: need(id, 'its permanent id', { example: 'points' }),
  mark: may(id, 'a short mark', { example: 'T17' }),
  also: or(list(id), [], 'other names for it'),
  test: need(text, 'what is done', { example: '"Points: look, card, file, gap"' }),
  short: may(text, 'the same in a few words'),
  how: may(text, 'how it is done'),
  tools: may(text, 'tools'),
  minutes: or(number(0, 10_000), 1, 'minutes'),
  money: or(number(0, 100_000), 0, 'what must be bought for it, in round units'),
  hazard: or(list(choice(...hazards)), [], 'what can hurt'),
  point: may(id, 'the hold point it needs', { key: 'point' }),
  caution: may(id, 'id of a caution'),
  cautions: or(list(id), [], 'ids of further cautions'),
  free: or(yesNo, false, 'a look that costs nothing and comes first'),
  notice: or(yesNo, false, 'noticed, never offered as a test'),
  running: or(yesNo, false, 'needs an engine that runs'),
  looksAt: may(text, 'tests that look at one thing do not count twice'),
  when: or(list(text), [], '`test=outcome`: offered only when one of these was seen'),
  unless: or(list(text), [], '`test=outcome`: not offered once one of these was seen'),
  after: or(list(id), [], 'tests that come before it'),
  fitted: or(list(text), [], 'things that must be on the machine for it'),
  takesOff: or(list(text), [], 'things that it takes off'),
  onceOff: may(text, 'the test in words where one of those is off already: then it is a look of some minutes'),
  applies: or(applies, {}, 'machines it is for'),
  outcomes: need(list(outcome), 'what may be seen'),
});

const together: Shape<FaultTogether> = entry({
  saw: need(list(text), 'outcomes that are seen together, each `test=outcome`', { example: '[spark=none]' }),
  words: may(text, 'what is seen, for the no-start card'),
  card: may(choice(...cardParts), 'part of the no-start card it stands in'),
  caution: may(id, 'id of a caution'),
  ...strengths,
  applies: or(applies, {}, 'machines it is for'),
});

export const faultsKind = defineRecord<FaultTables>({
  id: 'faults',
  purpose: 'Causes of not starting or running badly, tests, and what their outcomes speak for and against.',
  files: 'content/faults/*.md',
  matches: (file) => /(?:^|\/)faults\/.+\.md$/u.test(file),
  shape: wholeFile({
    title: may(text, 'a title for the page'),
    causes: or(list(cause), [], 'causes'),
    tests: or(list(test), [], 'tests, and what is noticed'),
    together: or(list(together), [], 'what outcomes say together'),
  }),
});
