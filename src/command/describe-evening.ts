// How `evening` and `to-get` are asked for: their options and what stands below their help.
import { InvalidArgumentError, type Command, type Option } from 'commander';
import type { EveningOptions } from './evening-command.ts';

/** Minutes of an evening where nobody says otherwise. */
export const usualMinutes = '90';

type Ask = (folder: string, options: EveningOptions) => Promise<void>;

const eveningHelp = `
Examples
  splitpin evening my-bike                        ninety minutes, alone
  splitpin evening my-bike --minutes 180 --helper
  splitpin evening workshop --json                for another program

Times are your own (\`takes:\` of a record), or what a procedure took before, or a plain estimate; where
nobody has said, that is said. Nothing in it says that a machine is fit to start or to ride.`;

const toGetHelp = `
Examples
  splitpin to-get my-bike                         by supplier, what holds a hold point first
  splitpin to-get workshop                        over all machines, each thing once
  splitpin to-get my-bike --json`;

/** Adds both commands; \`command\` makes one with its folder. */
export function describeEvening(
  command: (name: string, summary: string) => Command,
  today: () => Option,
  asks: { readonly evening: Ask; readonly toGet: Ask },
): void {
  command('evening', 'what can be done this evening with what is here, why not the rest, what would free most')
    .option('-m, --minutes <number>', 'minutes that there are', readMinutes, usualMinutes)
    .option('--helper', 'a second person is there (default: alone)')
    .option('--json', 'as plain data')
    .addOption(today())
    .addHelpText('after', eveningHelp)
    .action(asks.evening);
  command('to-get', 'what to buy, fetch and send back, by supplier')
    .option('--json', 'as plain data')
    .addOption(today())
    .addHelpText('after', toGetHelp)
    .action(asks.toGet);
}

function readMinutes(text: string): string {
  if (/^[1-9]\d{0,3}$/.test(text)) return text;
  throw new InvalidArgumentError('Write whole minutes, as 90.');
}
