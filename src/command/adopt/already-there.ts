// Was this machine adopted already, or does it stand in the workshop under another name? Told by the package's fingerprint and by the stamped numbers.
import { basename } from 'node:path';
import { findMachines, readMachineFolder } from '../../disk.ts';
import type { Records } from '../../records/model.ts';
import { readRecords } from '../../records/read.ts';

const asked = new Set(['machine.yaml', 'adopted.yaml']);

/** Why it is not adopted once more, in a sentence; undefined when nothing speaks against it. */
export function alreadyThere(
  workshop: string,
  coming: { readonly fingerprint: string | undefined; readonly records: Records },
): string | undefined {
  for (const folder of findMachines(workshop).value) {
    const files = readMachineFolder(folder).value?.files.filter(({ file }) => asked.has(file)) ?? [];
    const { machine, adopted } = readRecords(files, []).value ?? {};
    const name = basename(folder);
    const prints = [adopted?.fingerprint, ...(adopted?.before ?? []).map(({ fingerprint }) => fingerprint)];
    if (coming.fingerprint !== undefined && prints.includes(coming.fingerprint))
      return `This package was adopted already${adopted === undefined ? '' : `, on ${adopted.date}`}: its machine is ${name}.`;
    const number = sameNumber(machine, coming.records.machine);
    if (number !== undefined)
      return `${name} has the same ${number} number: this machine is in the workshop already. Its records are not touched.`;
  }
  return undefined;
}

/** Frame and engine numbers only: registrations change, and a key can fit two. */
function sameNumber(machine: Records['machine'] | undefined, coming: Records['machine']): string | undefined {
  return ['frame', 'engine'].find((name) => {
    const [here, there] = [machine, coming].map((one) => plain(one?.numbers.find((number) => number.name === name)));
    return here !== undefined && here === there;
  });
}

function plain(number: { readonly stamped: string } | undefined): string | undefined {
  const text = number?.stamped.toUpperCase().replaceAll(/[^\p{L}\d?]+/gu, '');
  return text === undefined || text === '' || text.includes('?') ? undefined : text;
}
