// An answer: what a person wrote into a blank. A tick is `yes` or `no`; a value or words stand as they were written.

export interface Answer {
  /** Id of the blank. */
  readonly blank: string;
  readonly value: string;
}

/** What answering does to a record, in words to be shown before it is done. */
export interface Change {
  /** Id of the blank; of what follows from the answers together (the state of the job), the key of the record. */
  readonly blank: string;
  readonly asks: string;
  readonly was?: string;
  readonly becomes: string;
}
