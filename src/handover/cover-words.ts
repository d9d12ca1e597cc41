// Private words covered wherever they stand in a text: in captions, notes, comments and running words.
import { leftOutMark, patternOf, type PrivateValue } from './private-value.ts';

/** The text with every private word covered; `told` is called for each one that was. */
export function coverWords(text: string, hunted: readonly PrivateValue[], told: (value: PrivateValue) => void): string {
  let covered = text;
  for (const value of hunted) {
    const pattern = patternOf(value.text);
    if (pattern === undefined) continue;
    covered = covered.replaceAll(pattern, () => {
      told(value);
      return value.instead ?? leftOutMark;
    });
  }
  return covered;
}
