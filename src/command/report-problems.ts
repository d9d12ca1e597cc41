// Problems told at the terminal: all at once, each with its place and the owner's own line where it has one.
import type { Problem } from '../problem/problem.ts';
import { formatReport } from '../problem/report.ts';
import { count } from './count.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import type { Terminal } from './terminal.ts';

type TextOf = (file: string) => string | undefined;

/** Tells problems of a folder as a whole, where there is no text to show. */
export function reportFolderProblems(problems: readonly Problem[], terminal: Terminal): ExitCode {
  const nowhere = { line: 1, column: 1, length: 1 };
  terminal.tell(
    formatReport(
      problems,
      () => undefined,
      () => nowhere,
      { colour: terminal.colour },
    ),
  );
  return exitCodes.problems;
}

/**
 * Tells problems of records with their lines: first what stops, then what is only asked, which may follow from what had to be
 * left out. Loads the finder of lines only when there is something to find.
 */
export async function reportProblems(problems: readonly Problem[], textOf: TextOf, terminal: Terminal): Promise<void> {
  if (problems.length === 0) return;
  const { locate, stops } = await import('../build.ts');
  const wrong = stops(problems);
  const asked = problems.filter((problem) => !wrong.includes(problem));
  const tell = (those: readonly Problem[]): void =>
    terminal.tell(formatReport(those, textOf, locate, { colour: terminal.colour }));
  if (wrong.length > 0) tell(wrong);
  if (asked.length === 0) return;
  if (wrong.length > 0) terminal.tell('\n' + leftOut(wrong) + '\n');
  tell(asked);
}

/** Names the files that were left out, so that nobody follows a query that only comes from that. */
function leftOut(wrong: readonly Problem[]): string {
  const files = [...new Set(wrong.map((problem) => problem.at.file))];
  const were =
    files.length === 1 ? ' was left out because of the problem above' : ' were left out because of the problems above';
  return files.join(', ') + were + '. A query below that depends on it may be false until it is put right:';
}

/** The report as text without colours, for a page. */
export async function reportText(problems: readonly Problem[], textOf: TextOf): Promise<string> {
  const { locate } = await import('../build.ts');
  return formatReport(problems, textOf, locate, { colour: false });
}

/** The last line of a report that stopped something. */
export function tellStopped(problems: readonly Problem[], what: string, terminal: Terminal): void {
  terminal.tell('');
  terminal.tell(count(problems.length, 'problem') + ' ' + what);
}
