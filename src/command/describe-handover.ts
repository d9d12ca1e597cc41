// How `handover` and `verify` are described.
import type { Command, Option } from 'commander';
import type { HandoverOptions } from './handover-command.ts';
import { exits } from './help-text.ts';

const afterHandover = `
Examples
  splitpin handover my-bike                    says what goes and what stays, asks, writes out/my-bike-handover
  splitpin handover my-bike --show             only says it
  splitpin handover my-bike --yes --without-prices --out /media/stick/pipit
  splitpin handover my-bike --may-go '4 Mill Road'

Names of people, addresses, telephone numbers, e-mail, signatures, key numbers, papers, private photographs, what cameras
wrote into photographs, the workshop and other machines stay with you. Your records are not changed. The package is looked
through before it is given out; if anything of that is found in it, it is not written.
${exits}`;

const afterVerify = `
Examples
  splitpin verify pipit-package                a folder
  splitpin verify pipit-package.zip            or its ZIP, which is not unpacked
${exits}`;

/** Adds both commands; `command` makes one with its machine folder. */
export function describeHandover(
  program: Command,
  command: (name: string, summary: string) => Command,
  today: () => Option,
  run: {
    readonly handover: (folder: string, options: HandoverOptions) => Promise<void>;
    readonly verify: (path: string) => Promise<void>;
  },
): void {
  command('handover', 'make a package for the next owner, without what is private')
    .option('-o, --out <folder>', 'where to (default: out/<machine>-handover in the current folder)')
    .option('--name <name>', 'name of the package (default: the machine folder’s, with -package)')
    .option('--without-prices', 'leave out every price and amount as well')
    .option('--may-go <words...>', 'words that look private and may go all the same')
    .option('--show', 'only say what goes and what stays')
    .option('--yes', 'write without asking')
    .addOption(today())
    .addHelpText('after', afterHandover)
    .action(run.handover);
  program
    .command('verify')
    .description('is a package as it was made? names every file that was changed, is missing or was added')
    .argument('<package>', 'the folder or the ZIP')
    .addHelpText('after', afterVerify)
    .action(run.verify);
}
