// Targets of what is written on a sheet of the machine and kept by a job's record: readings, torques, services, minutes of a run.
import type { Book } from '../book/book.ts';
import { nameInRecord } from '../book/own-words.ts';
import { wiringReading } from '../book/wiring-readings.ts';
import type { Target } from './target.ts';

/** By the id that the sheet prints; undefined where the blank is a tick or words without another key. */
export function machineTarget(book: Book, id: string): Target | undefined {
  return readingTarget(id) ?? torque(book, id) ?? service(book, id) ?? minute(id) ?? head(id) ?? number(id);
}

/** A box of a measuring sheet, of the sheet of tightening again, or of wires and earths. */
export function readingTarget(id: string): Extract<Target, { readonly kind: 'reading' }> | undefined {
  const ofWiring = wiringReading(id);
  if (ofWiring !== undefined) return { kind: 'reading', ...ofWiring };
  const found =
    /^inspection\/([^/]+)\/(.*)\/(found|left)$/u.exec(id) ?? /^re-torque\/([^/]+)(\/?)\/(found|left)$/u.exec(id);
  const [, item, position, side] = found ?? [];
  if (item === undefined || position === undefined || (side !== 'found' && side !== 'left')) return undefined;
  return { kind: 'reading', item, position, side };
}

function torque(book: Book, id: string): Target | undefined {
  const found = /^re-torque\/([^/]+)(\/reached)?$/u.exec(id);
  const fastener = found?.[1];
  if (fastener === undefined) return undefined;
  return {
    kind: 'torque',
    fastener,
    thing: nameInRecord(book.records.maker, fastener),
    reached: found?.[2] !== undefined,
  };
}

function service(book: Book, id: string): Target | undefined {
  const named = /^(?:service|running-in)\/([^/]+)$/u.exec(id)?.[1];
  const known = book.due.some((line) => line.service.id === named);
  return named === undefined || !known ? undefined : { kind: 'service', service: named };
}

/** A row of the run log is a minute; its columns go together. */
function minute(id: string): Target | undefined {
  const found = /^run-log\/(\d+)\/(\d+)$/u.exec(id);
  return found?.[1] === undefined
    ? undefined
    : { kind: 'minute', minute: String(Number(found[1]) - 1), row: `run-log/${found[1]}` };
}

/** The head of a sheet that is filled in at the machine says what the foot says as well; where it was, is words. */
function head(id: string): Target | undefined {
  const column = /^today\/1\/([124])$/u.exec(id)?.[1];
  if (column === undefined) return undefined;
  return { kind: 'foot', field: column === '1' ? 'date' : column === '2' ? 'odometer' : 'hand' };
}

function number(id: string): Target | undefined {
  const [, name, turn] = /^number\/([a-z]+)\/([12])$/u.exec(id) ?? [];
  return name === undefined ? undefined : { kind: 'number', name, turn: Number(turn) };
}
