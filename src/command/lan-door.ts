// The door for other devices in the same network: shut unless it was asked for, opened by a token that is drawn anew at each start.
import { randomBytes, timingSafeEqual, createHash } from 'node:crypto';
import { networkInterfaces } from 'node:os';
import type { IncomingMessage } from 'node:http';

/** What comes to the door: let in, shown in with a cookie, or sent away. */
export type Entrance =
  | { readonly kind: 'in' }
  | { readonly kind: 'shown in'; readonly location: string; readonly cookie: string }
  | { readonly kind: 'away' };

export interface LanDoor {
  /** The address with the token, for each address of this computer: `http://192.168.1.20:8137/?key=…`. */
  readonly addresses: (port: number) => readonly string[];
  /** Names under which this computer may be called. */
  readonly hosts: (port: number) => readonly string[];
  readonly ask: (request: IncomingMessage) => Entrance;
}

const cookieName = 'splitpin-key';

/** Opens a door; `own` are the addresses of this computer in its networks. */
export function openLanDoor(token: string = newToken(), own: readonly string[] = ownAddresses()): LanDoor {
  return {
    addresses: (port) => own.map((address) => `http://${address}:${String(port)}/?key=${token}`),
    hosts: (port) => own.map((address) => `${address}:${String(port)}`),
    ask: (request) => {
      const [path = '/', query = ''] = (request.url ?? '/').split('?');
      const key = new URLSearchParams(query).get('key');
      if (key !== null) {
        // The token leaves the address at once: no history, no referrer and no shoulder sees it there again.
        return same(key, token) && path.startsWith('/') && !path.startsWith('//')
          ? { kind: 'shown in', location: path, cookie: `${cookieName}=${token}; HttpOnly; SameSite=Lax; Path=/` }
          : { kind: 'away' };
      }
      return same(cookieOf(request), token) ? { kind: 'in' } : { kind: 'away' };
    },
  };
}

/** 128 bits that nobody guesses. */
function newToken(): string {
  return randomBytes(16).toString('base64url');
}

/** Compares in a time that tells nothing of where two texts differ, nor how long the right one is. */
function same(given: string | undefined, right: string): boolean {
  const [a, b] = [given ?? '', right].map((text) => createHash('sha256').update(text).digest());
  return a !== undefined && b !== undefined && timingSafeEqual(a, b);
}

function cookieOf(request: IncomingMessage): string | undefined {
  const pairs = (request.headers.cookie ?? '').split(';').map((pair) => pair.trim().split('='));
  return pairs.find(([name]) => name === cookieName)?.[1];
}

/** The addresses (IPv4) that other devices reach this computer by. */
function ownAddresses(): readonly string[] {
  return Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter((each) => each.family === 'IPv4' && !each.internal)
    .map((each) => each.address);
}
