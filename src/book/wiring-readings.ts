// What is read of wires and earths again: readings of two names, whose positions are the ids of the wires and of the places.

/** Volts lost between the battery’s earth post and a place, current flowing; a position is the id of the place. */
export const earthDrop = 'earth drop';

/** From end to end of a wire; a position is the id of the wire. */
export const wireResistance = 'wire resistance';

export interface WiringReading {
  readonly item: string;
  readonly position: string;
  readonly side: 'found' | 'left';
}

/** The reading that a box of the sheet of wires and earths is for, by its id; undefined for any other blank. */
export function wiringReading(id: string): WiringReading | undefined {
  const [, position, box] =
    /^wiring\/([^/]+)\/(through|found|left)$/u.exec(id) ?? /^form\/earth-drop\/([^/]+)\/(value|left)$/u.exec(id) ?? [];
  if (position === undefined) return undefined;
  return {
    item: box === 'through' ? wireResistance : earthDrop,
    position,
    side: box === 'left' ? 'left' : 'found',
  };
}
