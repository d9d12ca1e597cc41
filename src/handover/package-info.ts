// bag-info.txt: `Key: value` a line; a line that begins with a space goes on with the value before it.

export type InfoLine = readonly [key: string, value: string];

/** The text; line ends inside a value become spaces. */
export function infoText(lines: readonly InfoLine[]): string {
  return lines.map(([key, value]) => `${key}: ${value.replaceAll(/\s+/gu, ' ').trim()}\n`).join('');
}

/** The lines of a bag-info.txt; what is no line of one is left out. */
export function readInfo(text: string): readonly InfoLine[] {
  const lines = text.replaceAll(/(?:\r\n|\r|\n)[ \t]+/gu, ' ').split(/\r\n|\r|\n/u);
  return lines.flatMap((line): readonly InfoLine[] => {
    const match = /^([^:\s][^:]*?)\s*:\s*(.*)$/u.exec(line);
    return match === null ? [] : [[match[1] ?? '', (match[2] ?? '').trim()]];
  });
}

/** The first value of a key, whatever its capitals. */
export function infoValue(lines: readonly InfoLine[], key: string): string | undefined {
  return lines.find(([name]) => name.toLowerCase() === key.toLowerCase())?.[1];
}

/** Bytes and files of the payload, as the RFC writes them. */
export function oxumText(sizes: readonly number[]): string {
  return `${String(sizes.reduce((sum, size) => sum + size, 0))}.${String(sizes.length)}`;
}
