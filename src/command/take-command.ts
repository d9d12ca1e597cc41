// `take`: what was written elsewhere — forms, a telephone, old logs, photos — into the records of a machine.
import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Asker } from './asker.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { oneMachine } from './one-machine.ts';
import type { Surroundings } from './surroundings.ts';
import { takeReaders } from './take/list.ts';
import type { TakeOptions } from './take/reader.ts';

/** As the command line gives them. */
export interface TakeChoices {
  readonly yes?: boolean;
  readonly show?: boolean;
  readonly today?: string;
  /** `name=value`, each. */
  readonly how?: readonly string[];
}

/** Runs `splitpin take`: one thing after the other; the gravest outcome is that of all. */
export async function takeCommand(
  folder: string,
  things: readonly string[],
  choices: TakeChoices,
  around: Surroundings,
  asker: Asker,
): Promise<ExitCode> {
  const { terminal } = around;
  const machine = oneMachine(folder, around);
  if (typeof machine === 'number') return machine;
  const options = optionsOf(choices);
  if (typeof options === 'string') {
    terminal.tell(options);
    return exitCodes.usage;
  }
  let outcome: ExitCode = exitCodes.fine;
  try {
    for (const thing of things) {
      const from = resolve(around.folder, thing);
      const ended = await takeOne(thing, { machine, from, options, around, asker });
      if (ended > outcome) outcome = ended;
    }
  } finally {
    asker.close();
  }
  return outcome;
}

type Work = Parameters<(typeof takeReaders)[number]['take']>[0];

async function takeOne(thing: string, work: Work): Promise<ExitCode> {
  const { terminal } = work.around;
  const seen = lookAt(work.from);
  if (seen === undefined) {
    terminal.tell(`There is no file or folder ${thing}, or it cannot be read.`);
    return exitCodes.usage;
  }
  const reader = takeReaders.find((one) => one.knows(work.from, seen.head, seen.folder));
  if (reader !== undefined) return reader.take(work);
  terminal.tell(`${thing} is nothing that can be taken. These can:`);
  for (const { reads } of takeReaders) terminal.tell('  ' + reads);
  return exitCodes.usage;
}

/** The first bytes of a file, or that it is a folder; undefined when it is neither, or may not be read. */
function lookAt(path: string): { readonly head: Buffer; readonly folder: boolean } | undefined {
  try {
    const about = statSync(path);
    if (about.isDirectory()) return { head: Buffer.alloc(0), folder: true };
    if (!about.isFile()) return undefined;
    const head = Buffer.alloc(1024);
    const file = openSync(path, 'r');
    try {
      return { head: head.subarray(0, readSync(file, head)), folder: false };
    } finally {
      closeSync(file);
    }
  } catch {
    return undefined;
  }
}

function optionsOf({ how = [], ...choices }: TakeChoices): TakeOptions | string {
  const pairs = how.map((one) => /^([a-z][a-z-]*)=(.*)$/su.exec(one));
  const wrong = pairs.indexOf(null);
  if (wrong >= 0) return `--how ${how[wrong] ?? ''} is not understood: write --how name=value, as in --how wins=form.`;
  return { ...choices, said: Object.fromEntries(pairs.map((pair) => [pair?.[1] ?? '', pair?.[2] ?? ''])) };
}
