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

/** Tells problems of records with their lines. Loads the finder of lines only when there is something to find. */
export async function reportProblems(problems: readonly Problem[], textOf: TextOf, terminal: Terminal): Promise<void> {
  if (problems.length === 0) return;
  const { locate } = await import('../build.ts');
  terminal.tell(formatReport(problems, textOf, locate, { colour: terminal.colour }));
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
