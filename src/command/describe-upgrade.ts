// How `upgrade` is described.
import type { Command, Option } from 'commander';
import { helpAfter } from './help-text.ts';
import type { UpgradeOptions } from './upgrade-command.ts';

/** Adds the command; `command` makes one with its folder. */
export function describeUpgrade(
  command: (name: string, summary: string) => Command,
  shared: readonly Option[],
  run: (folder: string, options: UpgradeOptions) => Promise<void>,
): void {
  const made = command('upgrade', 'bring records of an earlier form up to this program, with a copy of each as it was')
    .option('--editor', 'schemas for editors too (.schema/), and the line in each record that names its own')
    .option('--yes', 'write without asking');
  for (const option of shared) made.addOption(option);
  made.addHelpText('after', helpAfter.upgrade).action(run);
}
