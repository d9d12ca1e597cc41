// How `adopt` is described.
import { InvalidArgumentError, type Command, type Option } from 'commander';
import type { AdoptOptions } from './adopt-command.ts';
import { exits } from './help-text.ts';

const after = `
Examples
  splitpin adopt pipit-package.zip                    a machine folder in the current folder, named as in the package
  splitpin adopt pipit-package.zip my-workshop        the same among the machines of a workshop
  splitpin adopt pipit-package my-workshop/green-one  under a name of your own
  splitpin adopt pipit-package.zip --how 'key number=K4471'

The package is verified first, and its records are read as a stranger’s: one that softens a hold point or a WARNING is refused.
What the former owner recorded stays as it came; plans and jobs under way are yours to go on with. What was left out is asked for.
Nothing that is there already is touched, and what is broken off leaves nothing behind.
${exits}`;

function said(text: string, before: Readonly<Record<string, string>> = {}): Readonly<Record<string, string>> {
  const cut = text.indexOf('=');
  if (cut <= 0) throw new InvalidArgumentError('Write a name, = and what is said, as key number=K4471.');
  return { ...before, [text.slice(0, cut).trim()]: text.slice(cut + 1).trim() };
}

/** Adds the command. */
export function describeAdopt(
  program: Command,
  today: () => Option,
  run: (path: string, folder: string | undefined, options: AdoptOptions) => Promise<void>,
): void {
  program
    .command('adopt')
    .description('take a package from a former owner over: its history stays as it came, and you go on')
    .argument('<package>', 'the folder or the ZIP')
    .argument('[folder]', 'a workshop to take it into, or the machine folder to make (default: here)')
    .option('--how <name=value>', 'say beforehand what was left out; may be given more than once', said)
    .addOption(today())
    .addHelpText('after', after)
    .action(run);
}
