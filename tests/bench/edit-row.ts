// One record changed while it is served: the time until every page that shows it has come with the new text.
import { spawn } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { get, type IncomingMessage } from 'node:http';
import { join } from 'node:path';
import { median, type Line } from './rows.ts';
import { records, writeMachine } from './workload.ts';

/** Changes one record after another; each time its page, the pages of its neighbours and every index page that shows it are asked for. */
export async function editRow(folder: string, program: string, count: number, turns: number): Promise<readonly Line[]> {
  const all = records(count);
  writeMachine(join(folder, 'machine'), all);
  const server = spawn(process.execPath, [program, 'serve', 'machine', '--port', '0', '--today', '2024-02-01'], {
    cwd: folder,
  });
  try {
    const address = await new Promise<string>((done) => {
      server.stdout.on('data', (piece: Buffer) => {
        const match = /http:\/\/\S+/.exec(piece.toString());
        if (match !== null) done(match[0]);
      });
    });
    const events = await changes(address);
    const times: number[] = [];
    for (let turn = 0; turn < turns + 3; turn += 1) {
      const record = all[(turn * 37) % all.length];
      if (record !== undefined) times.push(await edit(folder, address, record.id, turn, events));
    }
    // The first turns are the server's own warming up.
    const measured = median(times.slice(3));
    return [
      {
        work: 'one changed record in `serve`, 1,000 records',
        against: 'to every page that shows it',
        measured,
        must: 50,
        aim: 15,
        better: 'less',
        unit: 'ms',
      },
    ];
  } finally {
    server.kill('SIGTERM');
  }
}

async function edit(folder: string, address: string, id: string, turn: number, events: Events): Promise<number> {
  const file = join(folder, 'machine/jobs', id + '.md');
  const mark = 'Changed' + String(turn) + 'now';
  const text = readFileSync(file, 'utf8').replace(/^title: \S+/m, 'title: ' + mark);
  const told = events.next();
  const begun = performance.now();
  writeFileSync(file, text);
  await told;
  const year = id.slice(0, 4);
  const pages = [
    `jobs/${id}.html`,
    'index.html',
    'log.html',
    ...['', '-2', '-3', '-4'].map((further) => `log-${year}${further}.html`),
    'parts.html',
    'measurements.html',
    'measurements/ring-gap.html',
  ];
  const answers = await Promise.all(pages.map(async (page) => fetchText(address + page)));
  // A year of few records has fewer pages.
  const bodies = answers.filter((body) => body !== undefined);
  const ended = performance.now();
  const showing = bodies.filter((body) => body.includes(mark)).length;
  if (bodies.length < pages.length - 3 || showing < 2) throw new Error('the change is not shown where it must be');
  // The print of all records stands on every page: it tells whether a page was made from the records as they are now.
  const [version, ...others] = new Set(bodies.map(versionOf));
  if (version === undefined || others.length > 0) throw new Error('a page is older than the others');
  return ended - begun;
}

function versionOf(page: string): string {
  const version = /version <span class="figure">(\w+)<\/span>/.exec(page)?.[1];
  if (version === undefined) throw new Error('a page does not say from which records it was made');
  return version;
}

interface Events {
  readonly next: () => Promise<void>;
}

async function changes(address: string): Promise<Events> {
  let waiting: (() => void) | undefined;
  const response = await new Promise<IncomingMessage>((done) => get(address + '-/live', done));
  response.on('data', (piece: Buffer) => {
    if (piece.toString().includes('changed')) waiting?.();
  });
  response.on('error', () => undefined);
  return { next: async () => new Promise((done) => (waiting = done)) };
}

/** Undefined where there is no such page. */
async function fetchText(address: string): Promise<string | undefined> {
  return new Promise((done, failed) => {
    get(address, (response) => {
      const pieces: Buffer[] = [];
      response.on('data', (piece: Buffer) => pieces.push(piece));
      response.on('end', () => done(response.statusCode === 404 ? undefined : Buffer.concat(pieces).toString()));
    }).on('error', failed);
  });
}
