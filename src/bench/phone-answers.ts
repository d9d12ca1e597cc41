// The answers as a text that goes through any message: a head that says whose they are, one line an answer, and an end that proves it whole.

export interface Answered {
  readonly blank: string;
  readonly asks: string;
  readonly value: string;
  /** What the record said when the page was made; empty when nothing. */
  readonly given: string;
}

/**
 * The text. Each answer stands below a line that begins with `#` and says what was asked; `was [blank] value` says what the record
 * said there. The last line counts the answers, so that a text cut on its way is known for one.
 */
export function answersText(carried: Readonly<Record<string, string>>, answers: readonly Answered[]): string {
  const head = Object.entries(carried).map(([key, value]) => `${key}: ${oneLine(value)}`);
  const lines = answers.flatMap(({ blank, asks, value, given }) => [
    `# ${oneLine(asks)}`,
    ...(given === '' ? [] : [`was [${blankText(blank)}] ${oneLine(given)}`]),
    `[${blankText(blank)}] ${oneLine(value)}`,
  ]);
  const count = answers.length === 1 ? '1 answer' : `${String(answers.length)} answers`;
  return ['Splitpin answers', ...head, '', ...lines, '', `End of ${count}.`, ''].join('\n');
}

/** The bracket that closes an id, and the sign that writes it otherwise. */
function blankText(id: string): string {
  return id.replaceAll('%', '%25').replaceAll(']', '%5D');
}

function oneLine(text: string): string {
  return text.replaceAll(/\s+/g, ' ').trim();
}
