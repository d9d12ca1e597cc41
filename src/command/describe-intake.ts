// How `intake` is described: every question is an option as well.
import type { Command, Option } from 'commander';
import { helpAfter } from './help-text.ts';
import { questions } from './intake/questions.ts';
import type { IntakeOptions } from './intake-command.ts';

/** Adds the command to the program. `shared` are options that other commands have too. */
export function describeIntake(
  program: Command,
  shared: readonly Option[],
  run: (folder: string | undefined, options: IntakeOptions) => Promise<void>,
): void {
  const command = program
    .command('intake')
    .description('make a new machine folder by a dozen questions, plan its intake and print the sheets for it')
    .argument('[folder]', 'the folder to make (default: named after the machine, in the current folder)')
    .option('--answers <file>', 'a file of answers, one a line, as `make: Larkmoor`; the rest is left for later')
    .option('--name <words>', 'what you call it (default: make and model)');
  for (const { id, asks, example } of questions)
    command.option(`--${id} <answer>`, `${asks}; for example “${example}”`);
  command.option('-o, --out <folder>', 'where the sheets go (default: out/<machine>-print in the current folder)');
  for (const option of shared) command.addOption(option);
  command
    .addHelpText('after', helpAfter.intake)
    .action(async (folder: string | undefined, found: Readonly<Record<string, string>>) => {
      const given = questions.flatMap(({ id }) => {
        const answer = found[inCapitals(id)];
        return answer === undefined ? [] : [[id, answer] as const];
      });
      await run(folder, { ...found, given: Object.fromEntries(given) });
    });
}

/** As the reader of options names them: `engine-number` is `engineNumber`. */
function inCapitals(id: string): string {
  return id.replaceAll(/-([a-z])/gu, (_, letter: string) => letter.toUpperCase());
}
