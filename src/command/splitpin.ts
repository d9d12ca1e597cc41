#!/usr/bin/env node
// Where the program begins: the only place that sees the process, its terminal and its clock.
import { openAsker, type Asker } from './asker.ts';
import { enableCompileCache } from './compile-cache.ts';
import { exitCodes } from './exit-codes.ts';
import { faultText } from './fault-text.ts';
import { waitBeforeOptimising } from './patient-compiler.ts';
import { runProgram } from './program.ts';
import { openTerminal } from './terminal.ts';

// A server runs for hours; every other command is over in a moment.
if (!process.argv.includes('serve')) waitBeforeOptimising();
enableCompileCache();
// Whoever reads our output may stop reading, as `head` does; that is no fault.
process.stdout.on('error', (cause) => {
  if ('code' in cause && cause.code === 'EPIPE') process.exit(exitCodes.fine);
});

const terminal = openTerminal(process.stdout, process.stderr, process.env);
const asker = (): Asker => openAsker(process.stdin, process.stderr);
const surroundings = { terminal, folder: process.cwd(), clock: () => new Date() };

try {
  process.exitCode = await runProgram(
    process.argv.slice(2),
    {
      intake: async (folder, options) =>
        (await import('./intake-command.ts')).intakeCommand(folder, options, surroundings, asker()),
      take: async (folder, things, choices) =>
        (await import('./take-command.ts')).takeCommand(folder, things, choices, surroundings, asker()),
      add: async (folder, procedures, options) =>
        (await import('./add-command.ts')).addCommand(folder, procedures, options, surroundings, asker()),
      fill: async (folder, job, options) =>
        (await import('./fill-command.ts')).fillCommand(folder, job, options, surroundings, asker()),
      upgrade: async (folder, options) =>
        (await import('./upgrade-command.ts')).upgradeCommand(folder, options, surroundings, asker()),
      build: async (folder, options) =>
        (await import('./build-command.ts')).buildCommand(folder, options, surroundings),
      check: async (folder, options) =>
        (await import('./check-command.ts')).checkCommand(folder, options, surroundings),
      print: async (folder, wanted, options) =>
        (await import('./print-command.ts')).printCommand(folder, wanted, options, surroundings),
      serve: async (folder, options) =>
        (await import('./serve-command.ts')).serveCommand(folder, options, surroundings),
      evening: async (folder, options) =>
        (await import('./evening-command.ts')).eveningCommand(folder, options, surroundings),
      next: async (folder, options) => (await import('./next-command.ts')).nextCommand(folder, options, surroundings),
      toGet: async (folder, options) =>
        (await import('./evening-command.ts')).toGetCommand(folder, options, surroundings),
      handover: async (folder, options) =>
        (await import('./handover-command.ts')).handoverCommand(folder, options, surroundings, asker()),
      adopt: async (path, folder, options) =>
        (await import('./adopt-command.ts')).adoptCommand(path, folder, options, surroundings, asker()),
      verify: async (path) => (await import('./verify-command.ts')).verifyCommand(path, surroundings),
      work: async (id, words, options) =>
        (await import('./work-command.ts')).workCommand(id, words, options, surroundings),
    },
    terminal,
  );
} catch (cause) {
  terminal.tell('A fault of this program, not of your records. No output was changed.');
  terminal.tell(faultText(cause));
  process.exitCode = exitCodes.fault;
}
