// Every look over the book, ordered by what can hurt: first the person, then the machine, then the paper.
import { askedByAnotherId } from './asked-by-another-id.ts';
import type { Problem } from '../../problem/problem.ts';
import { moreThanBook, stagesAgainstTorque, torqueAgainstBook } from './against-book.ts';
import { backBeforeItCame, bagHalfEmptied, doneWithThingsOpen, fastenersLeftOver } from './bench.ts';
import { findingNeverAnswered } from './advisories.ts';
import { clockNotDescribed } from './clocks.ts';
import { conditionOfReading } from './conditions.ts';
import { correctedValueWasUsed, correctionOfNothing } from './corrections.ts';
import { datesAndStates, doneLater } from './dates.ts';
import { compressionBeforeTappets, noReTorqueAfterHeat, settingOlderThanItsMover } from './engine.ts';
import { fastenerNamedTwoWays } from './fastener-names.ts';
import { featureNotKnown } from './features.ts';
import { gearingUpsideDown, gearsOutOfOrder } from './gearing.ts';
import { numberDiffers, tooFarInADay } from './numbers.ts';
import { numberReadOtherwise } from './number-read.ts';
import { privateInOpenText } from './private-words.ts';
import { moneyOut, partFromNowhere } from './parts-and-money.ts';
import { putBackNeverOff, takenTwice, tightenedNeverLoose } from './put-back.ts';
import { itemNamedTwoWays } from './item-names.ts';
import { labelAgainstOiling } from './labels.ts';
import { partCountedTwice, partOnTwoMachines, returnedStillCounted } from './parts-twice.ts';
import { changedAfterSigning } from './signing.ts';
import type { Found, Look } from './query.ts';
import { mixtureWrittenTwoWays, plainPetrolInPremix, riddenWhileHeld, riddenWithThingsOpen } from './rides.ts';
import {
  checkWithoutEvidence,
  computedOnSafetyJoint,
  findingsOpen,
  safetyWorkUnchecked,
  tyreCodeOfThreeDigits,
} from './safety.ts';
import { scheduleForOtherSize } from './schedules.ts';
import { oilWithoutQuantity, serviceWithoutReading } from './services.ts';
import { dataForOtherFrames, limitWithoutPage, torqueFromGeneralTable } from './sources.ts';
import { headTorqueHot, notTightenedAgain, strippedNotRepaired } from './tightening.ts';
import { tightenedInOtherUnit, torqueDoesNotFit } from './torque.ts';
import { checkedByItsOwnHand, twoPeopleDisagree } from './same-day.ts';
import { jobsInTheWay } from './jobs-in-the-way.ts';
import { readTwiceDifferently } from './two-answers.ts';
import { unitSlip } from './unit-slip.ts';
import { betterThanNew, leftPastLimit, wearBackwards } from './wear.ts';

export const looks: readonly Look[] = [
  riddenWithThingsOpen,
  riddenWhileHeld,
  findingsOpen,
  notTightenedAgain,
  strippedNotRepaired,
  computedOnSafetyJoint,
  torqueFromGeneralTable,
  torqueDoesNotFit,
  tightenedInOtherUnit,
  fastenerNamedTwoWays,
  torqueAgainstBook,
  stagesAgainstTorque,
  safetyWorkUnchecked,
  checkedByItsOwnHand,
  twoPeopleDisagree,
  tyreCodeOfThreeDigits,
  plainPetrolInPremix,
  labelAgainstOiling,
  mixtureWrittenTwoWays,
  fastenersLeftOver,
  moreThanBook,
  noReTorqueAfterHeat,
  headTorqueHot,
  findingNeverAnswered,
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
  readTwiceDifferently,
  conditionOfReading,
  checkWithoutEvidence,
  serviceWithoutReading,
  oilWithoutQuantity,
  itemNamedTwoWays,
  correctionOfNothing,
  clockNotDescribed,
  tooFarInADay,
  numberDiffers,
  numberReadOtherwise,
  featureNotKnown,
  gearingUpsideDown,
  gearsOutOfOrder,
  dataForOtherFrames,
  scheduleForOtherSize,
  limitWithoutPage,
  askedByAnotherId,
  partFromNowhere,
  partOnTwoMachines,
  partCountedTwice,
  returnedStillCounted,
  moneyOut,
  changedAfterSigning,
  jobsInTheWay,
  datesAndStates,
  doneLater,
  privateInOpenText,
];

/** All queries, in the order of the list and inside it in the order of the records. */
export function lookOver(found: Found): readonly Problem[] {
  return looks.flatMap((look) => look(found));
}
