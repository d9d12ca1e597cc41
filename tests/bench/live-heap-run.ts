// Writes the history of a machine to nowhere and prints the live heap that a page costs, in kilobytes. Run with --expose-gc.
import { build, readContent, readDay } from '../../src/build.ts';
import { readContentFolder, readMachineFolder } from '../../src/disk.ts';
import { writePdf } from '../../src/pdf/write-pdf.ts';

const folder = readMachineFolder(process.argv[2] ?? '').value;
const today = readDay('2024-02-01');
if (folder === undefined || !today.ok) throw new Error('no machine to write');
const content = readContent(readContentFolder());
const made = build({ files: folder.files, assets: [], shared: [], before: [], content, today: today.value });
const sheet = made.value?.sheets.find((each) => each.id === 'history');
if (sheet === undefined) throw new Error('no history to write');

/** Bytes that are still reachable. */
function live(): number {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed;
}

const marks: { readonly bytes: number; readonly live: number }[] = [];
let bytes = 0;
let next = 0;
// The blocks of the whole sheet are made before the first page is written; they are not a page's cost.
void sheet.blocks.length;
const { pages } = await writePdf(sheet, {
  out: (chunk) => {
    bytes += chunk.length;
    if (bytes < next) return;
    marks.push({ bytes, live: live() });
    next = bytes + 200_000;
  },
  photo: () => undefined,
});
// The first fifth is the printer's own start: typefaces, caches of words.
const from = marks[Math.floor(marks.length / 5)];
const to = marks.at(-2);
if (from === undefined || to === undefined || bytes === 0) throw new Error('too short to measure');
const pagesBetween = (pages * (to.bytes - from.bytes)) / bytes;
console.log(String((to.live - from.live) / 1024 / pagesBetween));
