// `serve`: the binder on 127.0.0.1, following every change of the records.
import { basename, resolve } from 'node:path';
import { findMachines } from '../disk.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { faultText } from './fault-text.ts';
import { openLiveBinder, type LiveBinder, type Sent } from './live-binder.ts';
import { interrupted } from './interrupt.ts';
import { openLanDoor, type LanDoor } from './lan-door.ts';
import { liveScript, onlyProblems, withProblems, workshopPage } from './live-pages.ts';
import { startServer, type LocalServer } from './local-server.ts';
import type { Options } from './program.ts';
import { reportFolderProblems, reportProblems, reportText } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import { stops } from '../build.ts';
import { watchFolders } from './watch-folders.ts';

/** One machine as it is served; the prefix is empty when it is the only one. */
interface Mount {
  readonly prefix: string;
  readonly name: string;
  readonly live: LiveBinder;
}

/** Runs `splitpin serve` until it is interrupted. */
export async function serveCommand(folder: string, options: Options, around: Surroundings): Promise<ExitCode> {
  const { terminal } = around;
  const found = findMachines(resolve(around.folder, folder));
  if (found.value.length === 0) return reportFolderProblems(found.problems, terminal);
  terminal.progress('Reading the records');
  const mounts: Mount[] = [];
  for (const machine of found.value) {
    const live = await openLiveBinder({
      machine,
      today: () => dayFor(options.today, around),
      options,
      script: liveScript,
    });
    mounts.push({ prefix: found.value.length > 1 ? basename(machine) : '', name: basename(machine), live });
  }
  try {
    const door = options.lan === true ? openLanDoor() : undefined;
    const server = await startServer(
      Number(options.port ?? '0'),
      (path) => find(path, mounts),
      (cause) => terminal.tell(faultText(cause)),
      door,
    );
    for (const mount of mounts) await tell(mount, around);
    terminal.say(`Serving ${basename(resolve(around.folder, folder))} at ${server.address}  (Ctrl+C to stop)`);
    if (door !== undefined) await tellDoor(door, server, around);
    const watches = mounts.map((mount) => follow(mount, server, around));
    const ended = interrupted();
    await Promise.race([ended, warmUp(mounts)]);
    await ended;
    for (const watching of watches) watching.close();
    server.close();
    return exitCodes.fine;
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause && cause.code === 'EADDRINUSE')) throw cause;
    terminal.tell('Another program has this port. Give another with --port; --port 0 takes any that is free.');
    return exitCodes.usage;
  } finally {
    for (const { live } of mounts) live.close();
  }
}

/** The way in for a phone: each address with the key, the first of them as a square code too. */
async function tellDoor(door: LanDoor, { port }: LocalServer, { terminal }: Surroundings): Promise<void> {
  const [first, ...others] = door.addresses(port);
  if (first === undefined) return terminal.tell('This computer is in no network; nobody else can reach it.');
  const { squareCodeText } = await import('./square-code-text.ts');
  terminal.say(
    'For a phone in the same network, to read only. Whoever has this address can read the whole binder, private values too:',
  );
  for (const address of [first, ...others]) terminal.say('  ' + address);
  for (const line of squareCodeText(first)) terminal.say(line);
}

/** Refreshes one machine after each change, one refresh at a time, and tells the open pages. */
function follow(mount: Mount, server: LocalServer, around: Surroundings): { readonly close: () => void } {
  let running = false;
  let again = false;
  const refresh = async (touched: readonly string[] | undefined): Promise<void> => {
    again = running;
    if (running) return;
    running = true;
    await mount.live.refresh(touched);
    server.changed();
    watching.follow(mount.live.reading().folder.folders);
    await tell(mount, around);
    running = false;
    // What came in between is not known file by file.
    if (again) await refresh(undefined);
  };
  const watching = watchFolders((touched) => {
    refresh(touched).catch((cause: unknown) => {
      running = false;
      around.terminal.tell(faultText(cause));
    });
  });
  watching.follow(mount.live.reading().folder.folders);
  return watching;
}

/** Mistakes at the terminal; a line when all is well again. */
async function tell(mount: Mount, around: Surroundings): Promise<void> {
  const wrong = stops(mount.live.problems());
  await reportProblems(wrong, mount.live.reading().textOf, around.terminal);
  if (wrong.length > 0) around.terminal.tell(`The last good binder of ${mount.name} stays.`);
}

async function find(path: string, mounts: readonly Mount[]): Promise<Sent | undefined> {
  const [first] = mounts;
  if (first !== undefined && first.prefix === '') return findIn(first, path);
  if (path === '' || path === 'index.html') return { type: 'text/html; charset=utf-8', body: workshopPage(mounts) };
  const stroke = path.indexOf('/');
  const mount = mounts.find((each) => each.prefix === path.slice(0, stroke));
  return mount === undefined ? undefined : findIn(mount, path.slice(stroke + 1));
}

async function findIn({ live }: Mount, path: string): Promise<Sent | undefined> {
  const file = path === '' ? 'index.html' : path;
  const found = await live.file(file);
  const wrong = stops(live.problems());
  if (wrong.length === 0 || !file.endsWith('.html')) return found;
  const report = await reportText(wrong, live.reading().textOf);
  if (found === undefined) return { type: 'text/html; charset=utf-8', body: onlyProblems(report) };
  return { ...found, body: withProblems(String(found.body), report) };
}

async function warmUp(mounts: readonly Mount[]): Promise<void> {
  for (const { live } of mounts) await live.warmUp();
}
