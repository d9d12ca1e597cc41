// How `take` is described: what only one reader asks for is said with --how.
import { InvalidArgumentError, type Command, type Option } from 'commander';
import { helpAfter } from './help-text.ts';
import type { TakeOptions } from './take/reader.ts';

interface Given extends Omit<TakeOptions, 'said'> {
  readonly how?: Readonly<Record<string, string>>;
}

/** Adds the command to the program. `shared` are options that other commands have too. */
export function describeTake(
  program: Command,
  shared: readonly Option[],
  run: (folder: string, from: string, options: TakeOptions) => Promise<void>,
): void {
  const command = program
    .command('take')
    .description('take in what was written elsewhere: shown first, written when you say so, never twice')
    .argument('<folder>', 'a machine folder (it holds machine.yaml)')
    .argument('<file>', 'what to take: a filled form, a record from the phone, an old log (CSV), a folder of photos')
    .option('--how <name=value>', 'how it is to be read, where that is not clear from itself; may be given often', pair)
    .option('--yes', 'write without asking')
    .option('--show', 'show what would be written, and write nothing');
  for (const option of shared) command.addOption(option);
  command
    .addHelpText('after', helpAfter.take)
    .action(async (folder: string, from: string, { how, ...given }: Given) => {
      await run(folder, from, { ...given, said: how ?? {} });
    });
}

function pair(text: string, before: Readonly<Record<string, string>> = {}): Readonly<Record<string, string>> {
  const equals = text.indexOf('=');
  if (equals < 1) throw new InvalidArgumentError('Write a name and a value, as dates=day-month-year.');
  return { ...before, [text.slice(0, equals).trim()]: text.slice(equals + 1).trim() };
}
