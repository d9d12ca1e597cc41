// What an owner can choose of a buyer's copy; everything else stays with them or goes by itself.

export interface CopyChoices {
  /** Every price and amount stays with the owner. */
  readonly withoutPrices: boolean;
  /** Words that look private and may go all the same. */
  readonly mayGo: readonly string[];
  /** Names and stamped numbers of the other machines of the workshop. */
  readonly otherMachines: readonly string[];
}
