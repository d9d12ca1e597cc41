// How `next` is asked for: its options and what stands below its help.
import { Option, type Command } from 'commander';

export interface NextOptions {
  readonly saw?: readonly string[];
  readonly looked?: boolean;
  readonly longStored?: boolean;
  readonly latelyRunning?: boolean;
  readonly working?: boolean;
  readonly list?: boolean;
  readonly json?: boolean;
  readonly today?: string;
}

const nextHelp = `
Examples
  splitpin next my-bike                                   with what the records say
  splitpin next my-bike --saw spark=none --saw thumb=strong
  splitpin next my-bike --saw spark=thin --working        with the numbers behind the words
  splitpin next my-bike --list                            every test, sign, outcome and cause

It says what is likely and what to try next; every weight in it is judgement. A test whose hold point is held is
named with what holds it, and not offered.`;

/** Adds the command; `command` makes one with its folder. */
export function describeNext(
  command: (name: string, summary: string) => Command,
  today: () => Option,
  ask: (folder: string, options: NextOptions) => Promise<void>,
): void {
  command('next', 'the likeliest faults from what was seen, and the next test that tells most')
    .addOption(new Option('-s, --saw <test=outcome...>', 'what was seen besides the records; may be given many times'))
    .option('--looked', 'the free looks are done and told nothing')
    .option('--long-stored', 'the machine has stood for years (default: as the records say)')
    .option('--lately-running', 'the machine ran lately (default: as the records say)')
    .option('--working', 'show the numbers behind the words')
    .option('--list', 'list every test, sign, outcome and cause of this machine')
    .option('--json', 'as plain data')
    .addOption(today())
    .addHelpText('after', nextHelp)
    .action(ask);
}
