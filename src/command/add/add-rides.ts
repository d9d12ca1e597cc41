// `add <folder> rides`: the lines of the ride log typed in as they are printed, a record each, written down at once.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { readDay } from '../../build.ts';
import { readRide, type Ride } from '../../entry/ride-record.ts';
import type { Asker } from '../asker.ts';
import { count } from '../count.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { readMachine } from '../read-machine.ts';
import type { Surroundings } from '../surroundings.ts';
import { wouldBe } from '../take/would-be.ts';
import { writeFault } from '../write-fault.ts';
import { writeWhole } from '../write-whole.ts';

const head = 'date; out; in; fuel; oil; weather; what happened';

/** Asks for a ride until an empty line. One that cannot be kept is said, and at a terminal asked again; the others stand. */
export async function addRides(machine: string, today: string, around: Surroundings, asker: Asker): Promise<ExitCode> {
  const { terminal } = around;
  terminal.tell(`One ride a line, as on the sheet: ${head}. What is empty was not written; t is today.`);
  let [written, refused] = [0, 0];
  for (;;) {
    const line = (await asker.ask(`Ride (Enter for no more): `))?.trim();
    if (line === undefined || line === '' || line === 'q') break;
    const outcome = await rideInto(machine, line, today, { around, asker });
    if (outcome === 'broke off') return exitCodes.writing;
    if (outcome === 'written') written += 1;
    else refused += 1;
  }
  asker.close();
  terminal.say(`${count(written, 'ride')} written down.`);
  return refused > 0 && !asker.atTerminal ? exitCodes.problems : exitCodes.fine;
}

type Outcome = 'written' | 'refused' | 'broke off';
interface Hands {
  readonly around: Surroundings;
  readonly asker: Asker;
}

async function rideInto(machine: string, line: string, today: string, { around, asker }: Hands): Promise<Outcome> {
  const { terminal } = around;
  const read = readMachine(machine, today, {});
  const day = readDay(today);
  if (read.binder === undefined || !day.ok) {
    terminal.tell('The machine itself cannot be read: splitpin check says why.');
    return 'refused';
  }
  const { jobs, unread } = read.binder.book.records;
  const taken = new Set([...jobs, ...unread].map(({ file }) => file.toLowerCase()));
  const ride = readRide(read.binder.book, line, day.value, taken);
  if (!ride.ok) {
    terminal.tell(`   ${ride.why}`);
    return 'refused';
  }
  for (const doubt of ride.value.doubts) terminal.tell(`   ${doubt}`);
  if (ride.value.doubts.length > 0 && asker.atTerminal) {
    const said = await asker.ask('   Enter keeps it; n leaves it out: ');
    if (said === undefined || said.trim() !== '') return 'refused';
  }
  const [problem] = wouldBe(machine, today, [ride.value])?.problems ?? [];
  if (problem !== undefined) {
    terminal.tell(`   ${problem.message}${problem.hint === undefined ? '' : `: ${problem.hint}`}`);
    return 'refused';
  }
  return write(machine, ride.value, around);
}

function write(machine: string, { file, text }: Ride, { terminal }: Surroundings): Outcome {
  try {
    mkdirSync(join(machine, 'jobs'), { recursive: true });
    if (writeWhole(join(machine, file), text, undefined) !== 'changed') {
      terminal.say(`   ${file}`);
      return 'written';
    }
    terminal.tell(`   There is a file ${file} already; it was not touched.`);
    return 'refused';
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    terminal.tell(told);
    return 'broke off';
  }
}
