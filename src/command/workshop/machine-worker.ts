// A thread that makes binders of a workshop's machines, one after the other as they are handed to it.
import { parentPort } from 'node:worker_threads';
import { brokenDown } from './broken-down.ts';
import { makeAndTell, type HandedMachine, type ToldMachine } from './told-machine.ts';

async function make(handed: HandedMachine): Promise<ToldMachine> {
  try {
    return await makeAndTell(handed);
  } catch (cause) {
    return brokenDown(cause);
  }
}

parentPort?.on('message', (handed: HandedMachine) => {
  void make(handed).then((made) => parentPort?.postMessage(made));
});
