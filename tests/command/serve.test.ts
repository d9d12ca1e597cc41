// serve as a process: this computer only, nothing but the binder, and every change seen.
import { request } from 'node:http';
import { renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterEach, beforeAll, expect, test } from 'vitest';
import { compiled } from '../set-up/compiled.ts';
import { patience, startProgram, type Running } from './process.ts';
import { put, small, smallMachine } from './small-machine.ts';

let program = '';
let running: Running | undefined;
beforeAll(async () => {
  program = await compiled();
});
afterEach(async () => {
  if (running === undefined || running.child.exitCode !== null) return;
  const ended = new Promise((done) => running?.child.on('close', done));
  running.child.kill('SIGTERM');
  await ended;
});

interface Served {
  readonly port: number;
  readonly get: (path: string, headers?: Readonly<Record<string, string>>, method?: string) => Promise<Answer>;
}
interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: string;
}

async function serve(machine: string): Promise<Served> {
  running = startProgram(program, ['serve', machine, '--port', '0', '--today', '2024-06-01'], {
    folder: dirname(machine),
  });
  const [, port = ''] = await running.until(/http:\/\/127\.0\.0\.1:(\d+)\//);
  const get: Served['get'] = async (path, headers = {}, method = 'GET') =>
    new Promise((done, failed) => {
      const asked = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
        const pieces: Buffer[] = [];
        response.on('data', (piece: Buffer) => pieces.push(piece));
        response.on('end', () =>
          done({
            status: response.statusCode ?? 0,
            type: response.headers['content-type'] ?? '',
            body: Buffer.concat(pieces).toString('latin1'),
          }),
        );
      });
      asked.on('error', failed);
      asked.end();
    });
  return { port: Number(port), get };
}

interface Listening {
  /** Waits for the word of a change after which the page has the text; gives the page. */
  readonly until: (path: string, text: string) => Promise<string>;
  readonly close: () => void;
}

/** Listens for the server's word that something has changed. */
async function listen({ port, get }: Served): Promise<Listening> {
  let told = 0;
  const asked = request({ host: '127.0.0.1', port, path: '/-/live' });
  await new Promise<void>((done, failed) => {
    asked.on('error', failed);
    asked.on('response', (response) => {
      expect(response.headers['content-type']).toBe('text/event-stream');
      response.on('error', () => undefined);
      response.on('data', (piece: Buffer) => {
        told += piece.toString().split('event: changed').length - 1;
      });
      done();
    });
    asked.end();
  });
  let seen = 0;
  const changed = async (): Promise<void> => {
    for (let turn = 0; turn < patience / 10 && told === seen; turn += 1)
      await new Promise((done) => setTimeout(done, 10));
    if (told === seen) throw new Error('nothing was told');
    seen = told;
  };
  return {
    // A save that takes its time is told of twice.
    until: async (path, text) => {
      for (;;) {
        await changed();
        const { body } = await get(path);
        if (body.includes(text)) return body;
      }
    },
    close: () => asked.destroy(),
  };
}

test('gives pages, sheets, data and styles under the addresses that the pages use', async () => {
  const { get } = await serve(smallMachine());
  const wanted: readonly (readonly [string, string, string])[] = [
    ['/', 'text/html', 'Test machine'],
    ['/jobs/2024-03-02-bought.html', 'text/html', 'Found in a barn.'],
    ['/print/torque-table.pdf', 'application/pdf', '%PDF-'],
    ['/data/binder.json', 'application/json', '"format": 1'],
    ['/assets/splitpin.css', 'text/css', '{'],
    ['/-/live.js', 'text/javascript', 'EventSource'],
  ];
  for (const [path, type, text] of wanted) {
    const answer = await get(path);
    expect([path, answer.status, answer.type.split(';')[0], answer.body.includes(text)]).toEqual([
      path,
      200,
      type,
      true,
    ]);
  }
  const page = (await get('/index.html')).body;
  expect(page).toContain('src="/-/live.js"');
  expect(page).toMatch(/connect-src 'self'/);
  const head = await get('/index.html', {}, 'HEAD');
  expect([head.status, head.body]).toEqual([200, '']);
});

test('answers only to its own name, only to be read, and only with files of the binder', async () => {
  const { get, port } = await serve(smallMachine({ 'documents/private.txt': 'secret' }));
  for (const host of ['example.org', `example.org:${String(port)}`, '127.0.0.1', `[::1]:${String(port)}`]) {
    expect([host, (await get('/', { host })).status]).toEqual([host, 403]);
  }
  expect((await get('/', { host: `localhost:${String(port)}` })).status).toBe(200);
  for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS']) expect((await get('/', {}, method)).status).toBe(405);
  const climbing = [
    '/../machine.yaml',
    '/..%2fmachine.yaml',
    '/%2e%2e/%2e%2e/etc/passwd',
    '/assets/..%5c..%5cx',
    '/%',
    '/%00',
    '//etc/passwd',
    '/assets/../../package.json',
  ];
  for (const path of climbing) expect([path, (await get(path)).status]).toEqual([path, 400]);
  for (const path of [
    '/machine.yaml',
    '/documents/private.txt',
    '/photos/none.jpg',
    '/data/x.json',
    '/none.html',
    '/print/none.pdf',
    '/jobs/',
  ]) {
    expect([path, (await get(path)).status]).toEqual([path, 404]);
  }
  expect((await get('/index.html')).status).toBe(200);
});

test('shows a change at once, keeps the last good binder over a mistake, and takes it up again', async () => {
  const machine = smallMachine();
  const served = await serve(machine);
  const file = 'jobs/2024-03-02-bought.md';
  const text = small[file] ?? '';
  const page = '/jobs/2024-03-02-bought.html';
  expect((await served.get(page)).body).toContain('barn');
  const live = await listen(served);

  put(machine, { [file]: text.replace('barn', 'chapel') });
  await live.until(page, 'chapel');

  put(machine, { [file]: text.replace('barn', 'cellar').replace('1000 mi', '12,480 mi') });
  const mistaken = await live.until(page, 'number-ambiguous');
  expect(mistaken).toContain('chapel');
  expect(mistaken).toContain('2024-03-02-bought.md:6:11');
  await running?.until(/number-ambiguous[\s\S]*last good binder/);

  // As many editors save: a new file put in the place of the old one.
  writeFileSync(join(machine, 'new'), text.replace('barn', 'attic').replace('title: Bought', 'title: Carried off'));
  renameSync(join(machine, 'new'), join(machine, file));
  expect(await live.until(page, 'attic')).not.toContain('number-ambiguous');
  expect((await served.get('/log.html')).body).toContain('Carried off');

  put(machine, { 'jobs/2024-05-05-new.md': text.replace('Bought', 'Another').replace('2024-03-02', '2024-05-05') });
  await live.until('/log.html', 'Another');
  expect((await served.get('/jobs/2024-05-05-new.html')).status).toBe(200);
  live.close();
});

test('shows the mistakes alone while there has been no good binder, harmless whatever stands in them', async () => {
  const bad = '---\ntitle: "<script>alert(1)</script>"\ndate: 2024-05-01\nkind: nothing\nstate: done\n---\n';
  const machine = smallMachine({ 'jobs/x.md': bad });
  const served = await serve(machine);
  const page = (await served.get('/index.html')).body;
  expect(page).toContain('jobs/x.md:4:7');
  expect(page).not.toContain('<script>alert');
  const live = await listen(served);
  put(machine, { 'jobs/x.md': bad.replace('kind: nothing', 'kind: cleaning') });
  await live.until('/index.html', 'Test machine');
  live.close();
});

test('gives every machine of a workshop its own address', async () => {
  const machine = smallMachine({}, 'workshop/one');
  put(dirname(machine), Object.fromEntries(Object.entries(small).map(([file, text]) => ['two/' + file, text])));
  const { get } = await serve(dirname(machine));
  expect((await get('/')).body).toMatch(/href="\/one\/index.html"[\s\S]*href="\/two\/index.html"/);
  expect((await get('/two/jobs/2024-03-02-bought.html')).status).toBe(200);
  expect((await get('/three/index.html')).status).toBe(404);
});

test('ends with 0 when it is stopped, and says so when its port is taken', async () => {
  const machine = smallMachine();
  const { port } = await serve(machine);
  const second = startProgram(program, ['serve', machine, '--port', String(port)], { folder: dirname(machine) });
  const code = await new Promise((done) => second.child.on('close', done));
  expect([code, second.err()]).toEqual([2, expect.stringContaining('--port')]);
  const ended = new Promise((done) => running?.child.on('close', done));
  running?.child.kill('SIGINT');
  expect(await ended).toBe(0);
});

test('with --lan an address with a key and its square code are printed, and this computer needs no key', async () => {
  const machine = smallMachine();
  running = startProgram(program, ['serve', machine, '--lan', '--port', '0'], { folder: dirname(machine) });
  const [, port = ''] = await running.until(/http:\/\/127\.0\.0\.1:(\d+)\//);
  await running.until(/\?key=[A-Za-z0-9_-]{22}[\s\S]*█▀|in no network/);
  const status = await new Promise((done, failed) => {
    request({ host: '127.0.0.1', port, path: '/' }, (response) => done(response.resume().statusCode))
      .on('error', failed)
      .end();
  });
  expect(status).toBe(200);
});
