// The command line: five commands, their options and their help.
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';

import { describeEvening } from './describe-evening.ts';
import { describeNext, type NextOptions } from './describe-next.ts';
import type { AddOptions } from './add-command.ts';
import type { AdoptOptions } from './adopt-command.ts';
import { describeFill } from './describe-fill.ts';
import { describeAdopt } from './describe-adopt.ts';
import { describeHandover } from './describe-handover.ts';
import { describeIntake } from './describe-intake.ts';
import { describeTake } from './describe-take.ts';
import { describeUpgrade } from './describe-upgrade.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { helpAfter } from './help-text.ts';
import type { EveningOptions } from './evening-command.ts';
import type { FillOptions } from './fill-command.ts';
import type { HandoverOptions } from './handover-command.ts';
import type { IntakeOptions } from './intake-command.ts';
import { programVersion } from './program-version.ts';
import type { TakeChoices } from './take-command.ts';
import type { Terminal } from './terminal.ts';
import { isDay } from './today.ts';
import type { UpgradeOptions } from './upgrade-command.ts';

/** What a command was asked to do. Every option that was not given is absent. */
export interface Options {
  readonly out?: string;
  readonly paper?: 'a4' | 'letter' | 'a5' | 'half-letter' | 'tag' | 'card';
  readonly today?: string;
  /** Leaves are printed on both sides. */
  readonly bothSides?: boolean;
  readonly workings?: boolean;
  /** The history goes without the binder's data in its file. */
  readonly withoutData?: boolean;
  /** `print`: sheets of jobs come as forms to be filled in on a screen. */
  readonly form?: boolean;
  readonly siteOnly?: boolean;
  /** The folder holds a buyer's copy, and its binder says so. */
  readonly copy?: 'buyer';
  readonly port?: string;
  /** Other devices in the same network may read too, with a key. */
  readonly lan?: boolean;
  /** Goes on checking after every change. */
  readonly watch?: boolean;
  /** Machine folder that a calculation takes values from. */
  readonly in?: string;
}

/** What runs behind each command. Loaded when it is wanted, so that `--help` and `check` start quickly. */
export interface Commands {
  readonly intake: (folder: string | undefined, options: IntakeOptions) => Promise<ExitCode>;
  readonly take: (folder: string, things: readonly string[], choices: TakeChoices) => Promise<ExitCode>;
  readonly add: (folder: string, procedures: readonly string[], options: AddOptions) => Promise<ExitCode>;
  readonly fill: (folder: string, job: string | undefined, options: FillOptions) => Promise<ExitCode>;
  readonly upgrade: (folder: string, options: UpgradeOptions) => Promise<ExitCode>;
  readonly build: (folder: string, options: Options) => Promise<ExitCode>;
  readonly check: (folder: string, options: Options) => Promise<ExitCode>;
  readonly print: (folder: string, wanted: string, options: Options) => Promise<ExitCode>;
  readonly serve: (folder: string, options: Options) => Promise<ExitCode>;
  readonly evening: (folder: string, options: EveningOptions) => Promise<ExitCode>;
  readonly next: (folder: string, options: NextOptions) => Promise<ExitCode>;
  readonly toGet: (folder: string, options: EveningOptions) => Promise<ExitCode>;
  readonly handover: (folder: string, options: HandoverOptions) => Promise<ExitCode>;
  readonly verify: (path: string) => Promise<ExitCode>;
  readonly adopt: (path: string, folder: string | undefined, options: AdoptOptions) => Promise<ExitCode>;
  readonly work: (id: string | undefined, words: readonly string[], options: Options) => Promise<ExitCode>;
}

/** Reads the command line and runs what it asks for. */
export async function runProgram(words: readonly string[], commands: Commands, terminal: Terminal): Promise<ExitCode> {
  let result: ExitCode = exitCodes.fine;
  const keep = async (running: Promise<ExitCode>): Promise<void> => {
    result = await running;
  };
  const program = describe(terminal, {
    intake: async (folder, options) => keep(commands.intake(folder, options)),
    take: async (folder, things, choices) => keep(commands.take(folder, things, choices)),
    add: async (folder, procedures, options) => keep(commands.add(folder, procedures, options)),
    fill: async (folder, job, options) => keep(commands.fill(folder, job, options)),
    upgrade: async (folder, options) => keep(commands.upgrade(folder, options)),
    build: async (folder, options) => keep(commands.build(folder, options)),
    check: async (folder, options) => keep(commands.check(folder, options)),
    print: async (folder, wanted, options) => keep(commands.print(folder, wanted, options)),
    serve: async (folder, options) => keep(commands.serve(folder, options)),
    evening: async (folder, options) => keep(commands.evening(folder, options)),
    next: async (folder, options) => keep(commands.next(folder, options)),
    toGet: async (folder, options) => keep(commands.toGet(folder, options)),
    handover: async (folder, options) => keep(commands.handover(folder, options)),
    verify: async (path) => keep(commands.verify(path)),
    adopt: async (path, folder, options) => keep(commands.adopt(path, folder, options)),
    work: async (id, words, options) => keep(commands.work(id, words, options)),
  });
  try {
    await program.parseAsync([...words], { from: 'user' });
  } catch (cause) {
    if (!(cause instanceof CommanderError)) throw cause;
    return cause.exitCode === 0 ? exitCodes.fine : exitCodes.usage;
  }
  return result;
}

type Actions = { readonly [K in keyof Commands]: (...given: Parameters<Commands[K]>) => Promise<void> };

function describe(terminal: Terminal, actions: Actions): Command {
  const program = new Command('splitpin')
    .description('Makes a printable shop binder for each motorcycle from your job records.')
    .version(programVersion(), '-V, --version', 'print the version')
    .helpOption('-h, --help', 'show this help, or the help of a command')
    .helpCommand('help [command]', 'show the help of a command')
    .configureOutput({
      writeOut: (text) => terminal.say(text.trimEnd()),
      writeErr: (text) => terminal.tell(text.trimEnd()),
    })
    .showHelpAfterError('Write `splitpin --help` for all commands.')
    .addHelpText('after', helpAfter.program)
    .exitOverride();
  const command = (name: string, summary: string): Command =>
    program
      .command(name)
      .description(summary)
      .argument('<folder>', 'a machine folder (it holds machine.yaml), or a workshop of such folders');
  describeIntake(program, [today()], actions.intake);
  describeFill(command, today, actions);
  describeTake(program, [today()], actions.take);
  command('build', 'make the whole binder: site, PDFs and data')
    .option('-o, --out <folder>', 'where to (default: out/<machine> in the current folder)')
    .addOption(paper())
    .addOption(today())
    .addOption(bothSides())
    .option('--workings', 'print the working of every computed figure as well')
    .addOption(withoutData())
    .option('--site-only', 'only the pages; no PDFs and no data file')
    .addHelpText('after', helpAfter.build)
    .action(actions.build);
  command('check', 'read and compute everything, report what is wrong, write nothing')
    .option('--watch', 'go on after every change: one line a problem, as editors follow them')
    .addOption(today())
    .addHelpText('after', helpAfter.check)
    .action(actions.check);
  command('print', 'make the PDF of one sheet, or of every sheet of one job, whatever else is wrong')
    .argument('<sheet-or-job>', 'name of a sheet, of a job record or a part of it, or `all`')
    .option('-o, --out <folder>', 'where to (default: out/<machine>-print in the current folder)')
    .addOption(paper(['tag', 'card']))
    .addOption(today())
    .addOption(bothSides())
    .option('--workings', 'print the working of every computed figure as well')
    .option('--form', 'as a form: fill it in on a screen, then give it to `splitpin take`')
    .addOption(withoutData())
    .addHelpText('after', helpAfter.print)
    .action(actions.print);
  command('serve', 'show the binder on this computer and follow your changes')
    .option('-p, --port <number>', 'port on 127.0.0.1', readPort, '8137')
    .option('--lan', 'let other devices in this network read too, with a key that is printed (off by default)')
    .addOption(paper())
    .addOption(today())
    .addHelpText('after', helpAfter.serve)
    .action(actions.serve);
  describeEvening(command, today, actions);
  describeNext(command, today, actions.next);
  describeUpgrade(command, [today()], actions.upgrade);
  describeHandover(program, command, today, actions);
  describeAdopt(program, today, actions.adopt);
  describeWork(program, actions);
  for (const one of program.commands)
    one.showHelpAfterError(`Write \`splitpin help ${one.name()}\` for what goes with it, with examples.`);
  return program;
}

function describeWork(program: Command, actions: Actions): void {
  program
    .command('work')
    .description('work out a figure of the trade, with its working; without a name, list all calculations')
    .argument('[calculation]', 'name of a calculation')
    .argument('[values...]', 'name=value, as a person writes it: bore=50\u00a0mm')
    .option('--in <folder>', 'a machine folder: what is not given is taken from it')
    .addOption(today())
    .addHelpText('after', helpAfter.work)
    .action(actions.work);
}

/** Tags and cards take only what of a sheet is printed one to a side, so a whole binder is not made of them. */
function paper(more: readonly ('tag' | 'card')[] = []): Option {
  const sizes = ['a4', 'letter', 'a5', 'half-letter', ...more];
  return new Option('--paper <size>', 'paper of every sheet (default: the machine’s own)').choices(sizes);
}

function bothSides(): Option {
  return new Option('--both-sides', 'print on both sides: the punched margin changes sides with the page');
}

function withoutData(): Option {
  return new Option('--without-data', 'do not put the binder’s data into the file of the history');
}

function today(): Option {
  return new Option('--today <date>', 'the day to compute for, as 2026-11-14 (default: today)').argParser((text) => {
    if (isDay(text)) return text;
    throw new InvalidArgumentError('Write a date of the calendar, as 2026-11-14.');
  });
}

function readPort(text: string): string {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port < 65_536) return text;
  throw new InvalidArgumentError('Write a number up to 65535; 0 takes any free port.');
}
