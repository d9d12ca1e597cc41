// The small server behind `serve`: this computer only unless a door is opened, reading only, and nothing but files that the binder knows by name.
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { Entrance, LanDoor } from './lan-door.ts';
import type { Sent } from './live-binder.ts';
import { liveEvents, liveScript, liveScriptText } from './live-pages.ts';

export interface LocalServer {
  readonly address: string;
  readonly port: number;
  /** Tells every open page that something has changed. */
  readonly changed: () => void;
  readonly close: () => void;
}

/** Finds a file by its decoded path, without the first stroke. */
export type Find = (path: string) => Promise<Sent | undefined>;

/**
 * Starts the server on 127.0.0.1, or with a door on every address of this computer; port 0 takes any that is free. Rejects when the
 * port is taken.
 */
export async function startServer(
  port: number,
  find: Find,
  fault: (cause: unknown) => void,
  door?: LanDoor,
): Promise<LocalServer> {
  const listeners = new Set<ServerResponse>();
  const server = createServer((request, response) => {
    const hosts = [...hostsOf(server), ...(door?.hosts(portOf(server)) ?? [])];
    answer(request, response, { find, listeners, hosts, door }).catch((cause: unknown) => {
      fault(cause);
      refuse(response, 500);
    });
  });
  await new Promise<void>((done, failed) => {
    server.once('error', failed);
    server.listen({ port, host: door === undefined ? '127.0.0.1' : '0.0.0.0' }, done);
  });
  return {
    address: `http://${hostsOf(server)[0] ?? ''}/`,
    port: portOf(server),
    changed: () => {
      for (const listener of listeners) listener.write('event: changed\ndata: \n\n');
    },
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}

interface Context {
  readonly find: Find;
  readonly listeners: Set<ServerResponse>;
  readonly hosts: readonly string[];
  readonly door: LanDoor | undefined;
}

/** Pages that listen for changes at the same time; a browser keeps six at most. */
const mostListeners = 64;

async function answer(request: IncomingMessage, response: ServerResponse, context: Context): Promise<void> {
  // A page from elsewhere may reach this port under a name of its own; only our own names are answered.
  if (!context.hosts.includes(request.headers.host ?? '')) return refuse(response, 403);
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405);
  const path = pathOf(request.url ?? '');
  if (path === undefined) return refuse(response, 400);
  // By the line it came in on, not by the name it called: a name can be made up.
  const { remoteAddress, localAddress } = request.socket;
  const near = remoteAddress === '127.0.0.1' && localAddress === '127.0.0.1';
  const entrance: Entrance = near || context.door === undefined ? { kind: 'in' } : context.door.ask(request);
  if (entrance.kind === 'away') return refuse(response, 401);
  if (entrance.kind === 'shown in') return showIn(response, entrance);
  if (path === liveEvents.slice(1)) return listen(response, context.listeners);
  const found = path === liveScript.slice(1) ? script : await context.find(path);
  if (found === undefined) return refuse(response, 404);
  // Turned into bytes once: to count them and to send them are otherwise two walks over a long page.
  const body = typeof found.body === 'string' ? Buffer.from(found.body) : found.body;
  response.writeHead(200, { ...headers, 'content-type': found.type, 'content-length': body.byteLength });
  response.end(request.method === 'HEAD' ? undefined : body);
}

function showIn(
  response: ServerResponse,
  { location, cookie }: { readonly location: string; readonly cookie: string },
): void {
  response.writeHead(303, { ...headers, location, 'set-cookie': cookie });
  response.end();
}

const script: Sent = { type: 'text/javascript; charset=utf-8', body: liveScriptText };
const headers = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
};

/** The path below the root; undefined when it is not one that a link of ours could have. */
function pathOf(url: string): string | undefined {
  const raw = url.split('?')[0] ?? '';
  if (!raw.startsWith('/')) return undefined;
  try {
    const path = decodeURIComponent(raw.slice(1));
    const climbs = path.split(/[/\\]/).some((part) => part === '..' || part === '.');
    return climbs || path.includes('\0') || path.startsWith('/') ? undefined : path;
  } catch {
    return undefined;
  }
}

function listen(response: ServerResponse, listeners: Set<ServerResponse>): void {
  if (listeners.size >= mostListeners) return refuse(response, 503);
  response.writeHead(200, { ...headers, 'content-type': 'text/event-stream' });
  response.write('retry: 500\n\n');
  listeners.add(response);
  response.on('close', () => listeners.delete(response));
}

const reasons: Readonly<Record<number, string>> = {
  400: 'This address leads nowhere.',
  401: 'Open the address with the key that stands in the terminal, or read its square code.',
  403: 'Only this computer is served, under its own name.',
  404: 'There is no such page.',
  405: 'This server is for reading only.',
  503: 'Too many pages are open.',
  500: 'A fault of this program; see the terminal.',
};

function refuse(response: ServerResponse, status: number): void {
  if (!response.headersSent) response.writeHead(status, { ...headers, 'content-type': 'text/plain; charset=utf-8' });
  response.end((reasons[status] ?? '') + '\n');
}

function portOf(server: Server): number {
  const address = server.address();
  return address === null || typeof address === 'string' ? 0 : address.port;
}

function hostsOf(server: Server): readonly string[] {
  if (server.address() === null) return [];
  const port = String(portOf(server));
  return [`127.0.0.1:${port}`, `localhost:${port}`];
}
