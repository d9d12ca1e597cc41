// How `add` and `fill` are asked for: their options, and what stands below their help.
import type { Command, Option } from 'commander';
import type { AddOptions } from './add-command.ts';
import { exits } from './help-text.ts';
import type { FillOptions } from './fill-command.ts';

const addHelp = `
Examples
  splitpin add my-bike                                   asks which procedures, and when
  splitpin add my-bike wheel-rear-out --date 2026-11-28
  splitpin add my-bike wheel-rear-out chain-and-sprockets --title "Rear end"
  splitpin add my-bike --title "Seat off" --kind repair --reading "seat height"
  splitpin add my-bike list                              the procedures that there are for this machine
  splitpin add my-bike rides                             types in the ride log, a line and a record for each ride

The record gets its procedures, what is to be read, parts that go in new, the next bag numbers that are free, and the
steps as a comment. It can be printed and filled in at once.
${exits}`;

const fillHelp = `
Examples
  splitpin fill my-bike rear-wheel               a part of the job's name is enough
  splitpin fill my-bike rear-wheel --hand helper
  splitpin fill my-bike rear-wheel --list > sheet.txt
  splitpin fill my-bike rear-wheel --answers sheet.txt
  splitpin fill my-bike intake --sheet intake    what was written on a sheet of the machine, into this job's record

At a question: a value (0,35 and 0.35 and 14 thou alike; without a unit it is in the unit of the box), ? for not known,
- for not done, 0.50 > 0.35 as found and as left, Enter for later, s to leave the rest of a list for later, a note after ; and q to stop. Every answer is written down at once, and only what
was answered: all else in the record stays as it is. Through a pipe each line answers the next question.
Two hands that write two values are both kept; --again asks what is there already, and what you give takes its place.
${exits}`;

interface Runs {
  readonly add: (folder: string, procedures: readonly string[], options: AddOptions) => Promise<void>;
  readonly fill: (folder: string, job: string | undefined, options: FillOptions) => Promise<void>;
}

/** Adds both commands; `command` makes one with its folder. */
export function describeFill(
  command: (name: string, summary: string) => Command,
  today: () => Option,
  runs: Runs,
): void {
  command('add', 'plan a job: a record with its blanks, ready to print and to fill in')
    .argument('[procedures...]', 'names of procedures, or: list, rides; without any, what is missing is asked')
    .option('-t, --title <words>', 'what the job is (default: the procedures’ own titles)')
    .option('-d, --date <date>', 'the day it is planned for (default: today)')
    .option('-k, --kind <kind>', 'kind of job: strip, repair, service … (default: by its first procedure)')
    .option('--for <words>', 'what it is for')
    .option('--hands <names>', 'who works, parted by commas')
    .option('--reading <items...>', 'what else is to be read')
    .option('--part <parts...>', 'what else is wanted')
    .option('--name <name>', 'name of the record (default: date and title)')
    .addOption(today())
    .addHelpText('after', addHelp)
    .action(runs.add);
  command('fill', 'type what was written on a job’s sheets into its record')
    .argument('[job]', 'name of the job, or a part of it (default: the only one that is open)')
    .option('-a, --answers <file>', 'take the answers from a file, and ask nothing')
    .option('-l, --list', 'print the blanks as such a file, and ask nothing')
    .option('--again', 'ask what the record says already, too; what you give takes its place')
    .option('--hand <name>', 'whose hand filled the sheet')
    .option('--sheet <names...>', 'sheets of the machine whose blanks go into this record')
    .addOption(today())
    .addHelpText('after', fillHelp)
    .action(runs.fill);
}
