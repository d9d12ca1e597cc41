// Money: whole minor units and a currency, never a fraction of a penny by accident.

export interface Money {
  /** Pence, cents: a safe integer. */
  readonly minor: number;
  /** ISO 4217 code. */
  readonly currency: string;
}
