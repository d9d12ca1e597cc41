// Every look over the book, ordered by what can hurt: first the person, then the machine, then the paper.
import type { Problem } from '../../problem/problem.ts';
import {
  backBeforeItCame,
  bagHalfEmptied,
  doneWithThingsOpen,
  fastenersLeftOver,
  oilWithoutQuantity,
  putBackNeverOff,
  takenTwice,
  tightenedNeverLoose,
} from './bench.ts';
import { correctedValueWasUsed, correctionOfNothing } from './corrections.ts';
import { compressionBeforeTappets, noReTorqueAfterHeat, settingOlderThanItsMover } from './engine.ts';
import {
  dataForOtherFrames,
  datesAndStates,
  limitWithoutPage,
  moneyOut,
  numberDiffers,
  partFromNowhere,
  serviceWithoutReading,
  tooFarInADay,
} from './paper.ts';
import type { Found, Look } from './query.ts';
import { betterThanNew, conditionOfReading, leftPastLimit, unitSlip, wearBackwards } from './readings.ts';
import { mixtureWrittenTwoWays, plainPetrolInPremix, riddenWhileHeld, riddenWithThingsOpen } from './rides.ts';
import {
  checkWithoutEvidence,
  computedOnSafetyJoint,
  findingsOpen,
  safetyWorkUnchecked,
  strippedNotRepaired,
  tyreCodeOfThreeDigits,
} from './safety.ts';

export const looks: readonly Look[] = [
  riddenWithThingsOpen,
  riddenWhileHeld,
  findingsOpen,
  strippedNotRepaired,
  computedOnSafetyJoint,
  safetyWorkUnchecked,
  tyreCodeOfThreeDigits,
  plainPetrolInPremix,
  mixtureWrittenTwoWays,
  fastenersLeftOver,
  noReTorqueAfterHeat,
  unitSlip,
  leftPastLimit,
  settingOlderThanItsMover,
  correctedValueWasUsed,
  compressionBeforeTappets,
  doneWithThingsOpen,
  bagHalfEmptied,
  backBeforeItCame,
  takenTwice,
  putBackNeverOff,
  tightenedNeverLoose,
  wearBackwards,
  betterThanNew,
  conditionOfReading,
  checkWithoutEvidence,
  serviceWithoutReading,
  oilWithoutQuantity,
  correctionOfNothing,
  tooFarInADay,
  numberDiffers,
  dataForOtherFrames,
  limitWithoutPage,
  partFromNowhere,
  moneyOut,
  datesAndStates,
];

/** All queries, in the order of the list and inside it in the order of the records. */
export function lookOver(found: Found): readonly Problem[] {
  return looks.flatMap((look) => look(found));
}
