// Calendar dates: no time of day, no time zone. A Day is its ISO text, so days compare and sort as strings.
declare const day: unique symbol;

/** `2024-05-04`. */
export type Day = string & { readonly [day]: true };

/** One day, or the first and last day of a job. A month alone (`2024-05`) spans the month and is `whole: 'month'`. */
export interface DaySpan {
  readonly from: Day;
  readonly to: Day;
  readonly whole?: 'month' | 'year';
}
