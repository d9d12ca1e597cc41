// The weights behind the words of the fault tables. Every one is judgement: none was counted, and the sheet says so.

/** Odds of a cause before anything is seen. On a machine that has stood, more is wrong at once than on one that ran lately. */
export const startingOdds = {
  'long stored': { 'very likely': 8 / 16, likely: 4 / 16, occasional: 2 / 16, rare: 1 / 16 },
  'lately running': { 'very likely': 8 / 32, likely: 4 / 32, occasional: 2 / 32, rare: 1 / 32 },
} as const;

/** What an outcome multiplies the odds of a cause by. `shows`: seen with the eyes; `excludes`: cannot be. */
export const strengths = {
  shows: 50,
  stronglyFor: 8,
  for: 3,
  against: 1 / 3,
  stronglyAgainst: 1 / 8,
  excludes: 0,
} as const;

/** Work on a thing since: it may be cured, or moved, and is to be proved again. */
export const afterCure = 1 / 8;
export const afterMoving = 8;

/** Minutes that a hazard, a unit of money, and beginning anything at all count for. */
export const hazardMinutes: Readonly<Record<string, number>> = {
  petrol: 1,
  'high tension': 1,
  heat: 2,
  acid: 2,
  air: 5,
  'moving parts': 5,
  fire: 6,
  road: 15,
};
export const minutesPerMoney = 0.5;
export const minutesToBegin = 3;

/**
 * How much the question of a cause counts once something seen speaks for any: 1 where one thing speaks strongly for it, more
 * where several agree, little where nothing does. Before anything is seen, all count alike.
 */
export const relevance = { most: 3, silent: 0.02, against: 0.01 } as const;

/** Until a cause has been seen with the eyes it counts as no surer than this: the leading suspect stays worth proving. */
export const surestUnseen = 3;
