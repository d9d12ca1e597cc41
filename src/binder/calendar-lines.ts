// Lines of an iCalendar file (RFC 5545, 3.1): folded at 75 octets, never inside a character, ended by CR and LF.

const most = 75;
const octets = new TextEncoder();

/** Names with their values, ready to be written. */
export function contentLines(lines: readonly (readonly [string, string])[]): string {
  return lines.map(([name, value]) => `${folded(`${name}:${value}`)}\r\n`).join('');
}

/** A line after the first begins with a space, which counts. */
function folded(line: string): string {
  let out = '';
  let length = 0;
  for (const letter of line) {
    const size = octets.encode(letter).length;
    if (length + size > most) {
      out += '\r\n ';
      length = 1;
    }
    out += letter;
    length += size;
  }
  return out;
}
