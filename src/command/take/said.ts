// Something that `take` has to know: said beforehand with --how, asked at a terminal, and otherwise the taking ends with what to write.
import type { TakeWork } from './reader.ts';

export interface Asked {
  /** Name for `--how name=value`. */
  readonly name: string;
  readonly asks: string;
  /** The words that can be the answer, where there are few. */
  readonly choices?: readonly string[];
}

/** The answer; undefined when it was not said and nobody can be asked, or it is none of the choices: then it has been told. */
export async function said(work: TakeWork, asked: Asked): Promise<string | undefined> {
  const { terminal } = work.around;
  const { name, asks, choices } = asked;
  const given = work.options.said[name];
  const words = choices === undefined ? '' : ` (${choices.join(', ')})`;
  if (given !== undefined) {
    if (choices === undefined || choices.includes(given)) return given;
    terminal.tell(`--how ${name}=${given} cannot be taken: write one of ${choices.join(', ')}.`);
    return undefined;
  }
  if (!work.asker.atTerminal) {
    terminal.tell(`${asks}${words} Say it: --how ${name}=${choices?.[0] ?? '…'}`);
    return undefined;
  }
  for (;;) {
    const line = (await work.asker.ask(`${asks}${words}: `))?.trim();
    if (line === undefined) return undefined;
    if (choices === undefined ? line !== '' : choices.includes(line)) return line;
    if (choices !== undefined) terminal.tell(`Write one of: ${choices.join(', ')}.`);
  }
}

/** Asks whether to go on: `--yes` says so beforehand, `--show` says no; through a pipe without either nothing is written. */
export async function confirmed(work: TakeWork, question: string): Promise<boolean> {
  const { terminal } = work.around;
  if (work.options.show === true) return false;
  if (work.options.yes === true) return true;
  const line = await work.asker.ask(`${question} (yes or no): `);
  if (line === undefined && !work.asker.atTerminal) terminal.tell('Nothing was written. Write it with --yes.');
  return line !== undefined && /^y(?:es)?$/iu.test(line.trim());
}
