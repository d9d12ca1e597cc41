// The print of one record: what a form carries, to tell that the record has been written to since it was printed.
import { printOf } from '../records/signed-print.ts';
import { cleanText } from '../source/clean-text.ts';

/** Seven letters and digits over the text; line ends and a byte order mark do not count. Tells versions apart, proves nothing. */
export function recordPrint(text: string): string {
  return printOf(cleanText(text));
}
