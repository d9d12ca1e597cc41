// serve --lan: shut unless asked for; with it only the key opens, nothing can be changed, and nothing hostile gets further.
import { connect } from 'node:net';
import { request, type IncomingHttpHeaders } from 'node:http';
import { describe, expect, test } from 'vitest';
import { openLanDoor, type LanDoor } from '../../src/command/lan-door.ts';
import { startServer, type LocalServer } from '../../src/command/local-server.ts';

const token = 'AAAAAAAAAAAAAAAAAAAAAA';
/** Another address of this computer stands in for another device: what comes by it did not come from 127.0.0.1. */
const device = '127.0.0.2';

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}
interface Ask {
  readonly headers?: Readonly<Record<string, string>>;
  readonly method?: string;
  readonly from?: string;
}

async function ask(
  port: number,
  path: string,
  { headers = {}, method = 'GET', from = device }: Ask = {},
): Promise<Answer> {
  return new Promise((done, failed) => {
    const asked = request({ host: from, localAddress: from, port, path, method, headers }, (response) => {
      const pieces: Buffer[] = [];
      response.on('data', (piece: Buffer) => pieces.push(piece));
      response.on('end', () =>
        done({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(pieces).toString() }),
      );
    });
    asked.on('error', failed);
    asked.end();
  });
}

async function served(door: LanDoor | undefined, test: (server: LocalServer) => Promise<void>): Promise<void> {
  const page = { type: 'text/html; charset=utf-8', body: '<main>the binder</main>' };
  const find = async (path: string) => Promise.resolve(path === '' || path === 'index.html' ? page : undefined);
  const server = await startServer(0, find, () => undefined, door);
  try {
    await test(server);
  } finally {
    server.close();
  }
}

describe('the door', () => {
  test('is not there unless it was asked for: only 127.0.0.1 listens', async () => {
    await served(undefined, async ({ port }) => {
      await expect(ask(port, '/')).rejects.toThrow('ECONNREFUSED');
      expect((await ask(port, '/', { from: '127.0.0.1' })).status).toBe(200);
    });
  });

  test('opens with the key alone, which leaves the address at once', async () => {
    await served(openLanDoor(token, [device]), async ({ port }) => {
      expect((await ask(port, '/')).status).toBe(401);
      expect((await ask(port, '/index.html')).body).not.toContain('binder<');
      const shown = await ask(port, `/index.html?key=${token}`);
      expect([shown.status, shown.headers.location]).toEqual([303, '/index.html']);
      const cookie = shown.headers['set-cookie']?.[0] ?? '';
      expect(cookie).toMatch(/HttpOnly; SameSite=Lax; Path=\/$/u);
      expect(shown.headers['referrer-policy']).toBe('no-referrer');
      const inside = await ask(port, '/index.html', { headers: { cookie: cookie.split(';')[0] ?? '' } });
      expect([inside.status, inside.body.includes('the binder')]).toEqual([200, true]);
      expect(JSON.stringify(inside.headers)).not.toContain(token);
    });
  });

  test('stays shut for anything near the key, and for a name that is not ours', async () => {
    await served(openLanDoor(token, [device]), async ({ port }) => {
      for (const key of ['', 'A', token + 'A', token.slice(1), token.toLowerCase(), encodeURIComponent(token + '\0')])
        expect([key, (await ask(port, `/?key=${key}`)).status]).toEqual([key, 401]);
      for (const cookie of ['splitpin-key=', 'splitpin-key=AAA', `other=${token}`, `splitpin-key=${token}x`])
        expect([cookie, (await ask(port, '/', { headers: { cookie } })).status]).toEqual([cookie, 401]);
      for (const host of ['example.org', `example.org:${String(port)}`])
        expect([host, (await ask(port, `/?key=${token}`, { headers: { host } })).status]).toEqual([host, 403]);
      // A name can be made up; the line cannot.
      expect((await ask(port, '/', { headers: { host: `127.0.0.1:${String(port)}` } })).status).toBe(401);
      expect((await ask(port, '/', { from: '127.0.0.1' })).status).toBe(200);
      expect((await ask(port, '//elsewhere.example/?key=' + token)).status).toBe(400);
    });
  });

  test('lets nothing be changed and nothing climb, key or no key', async () => {
    await served(openLanDoor(token, [device]), async ({ port }) => {
      const headers = { cookie: `splitpin-key=${token}` };
      for (const method of ['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE'])
        expect([method, (await ask(port, '/', { headers, method })).status]).toEqual([method, 405]);
      for (const path of [
        '/../machine.yaml',
        '/..%2fmachine.yaml',
        '/%2e%2e/etc/passwd',
        '/a/..%5c..%5cx',
        '/%',
        '/%00',
        '//etc/passwd',
      ])
        expect([path, (await ask(port, path, { headers })).status]).toEqual([path, 400]);
      expect((await ask(port, '/machine.yaml', { headers })).status).toBe(404);
    });
  });

  test('takes headers that are too large, or no HTTP at all, without falling over', async () => {
    await served(openLanDoor(token, [device]), async ({ port }) => {
      expect((await ask(port, '/', { headers: { cookie: 'a'.repeat(40_000) } })).status).toBe(431);
      const answered = await new Promise<string>((done) => {
        const socket = connect(port, device, () => socket.write('\0\x01\x02 nonsense\r\n\r\n'));
        let text = '';
        socket.on('data', (piece: Buffer) => {
          text += piece.toString();
        });
        socket.on('error', () => undefined);
        socket.on('close', () => done(text));
      });
      expect(answered).toMatch(/^HTTP\/1\.1 400/u);
      expect((await ask(port, '/', { from: '127.0.0.1' })).status).toBe(200);
    });
  });

  test('draws another key each time, long enough that nobody guesses it', () => {
    const keys = Array.from(
      { length: 20 },
      () => openLanDoor(undefined, ['10.0.0.5']).addresses(8137)[0]?.split('key=')[1] ?? '',
    );
    expect(new Set(keys).size).toBe(20);
    for (const key of keys) expect(key).toMatch(/^[A-Za-z0-9_-]{22}$/u);
  });

  test('a page more that listens than there can be is sent away', async () => {
    await served(undefined, async ({ port }) => {
      const open = Array.from({ length: 64 }, () => request({ host: '127.0.0.1', port, path: '/-/live' }));
      await Promise.all(
        open.map(
          async (one) =>
            new Promise<void>((done, failed) => {
              one.on('response', (response) => {
                response.on('error', () => undefined);
                done();
              });
              one.on('error', failed);
              one.end();
            }),
        ),
      );
      expect((await ask(port, '/-/live', { from: '127.0.0.1' })).status).toBe(503);
      for (const one of open) one.on('error', () => undefined).destroy();
    });
  });
});
