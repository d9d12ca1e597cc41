// How `take` is described: what only one reader asks for is said with --how.
import type { Command, Option } from 'commander';
import { helpAfter } from './help-text.ts';
import type { TakeChoices } from './take-command.ts';

/** Adds the command to the program. `shared` are options that other commands have too. */
export function describeTake(
  program: Command,
  shared: readonly Option[],
  run: (folder: string, things: readonly string[], choices: TakeChoices) => Promise<void>,
): void {
  const command = program
    .command('take')
    .description('take in what was written elsewhere: shown first, written when you say so, never twice')
    .argument('<folder>', 'a machine folder (it holds machine.yaml)')
    .argument('<things...>', 'a filled form, a record from the phone, an old log (CSV), a folder of photos')
    .option('--how <name=value>', 'how it is to be read, where that is not clear from itself; may be given often', more)
    .option('--yes', 'write without asking')
    .option('--show', 'show what would be written, and write nothing');
  for (const option of shared) command.addOption(option);
  command.addHelpText('after', helpAfter.take).action(run);
}

function more(text: string, before: readonly string[] = []): readonly string[] {
  return [...before, text];
}
