// A thread that makes binders of a workshop's machines, one after the other as they are handed to it.
import { parentPort } from 'node:worker_threads';
import { exitCodes } from '../exit-codes.ts';
import { faultText } from '../fault-text.ts';
import { keptTerminal } from './kept-terminal.ts';
import type { HandedMachine, MadeMachine } from './machine-threads.ts';
import { buildMachine } from './machine-build.ts';

async function make({ job, colour }: HandedMachine): Promise<MadeMachine> {
  const { terminal, lines } = keptTerminal(colour);
  try {
    const code = await buildMachine(job, terminal);
    return { code, lines };
  } catch (cause) {
    terminal.tell('A fault of this program, not of your records. No output was changed.');
    terminal.tell(faultText(cause));
    return { code: exitCodes.fault, lines };
  }
}

parentPort?.on('message', (handed: HandedMachine) => {
  void make(handed).then((made) => parentPort?.postMessage(made));
});
