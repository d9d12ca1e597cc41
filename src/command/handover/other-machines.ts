// The other machines of a workshop, by what would name them in a record: they stay out of a copy for a next owner.
import { join } from 'node:path';
import { findMachines, readMachineFolder } from '../../disk.ts';
import { readRecords } from '../../records/read.ts';

/** Names, and stamped numbers long enough to be one, of the machines beside `own` in a workshop. */
export function otherMachinesNear(workshop: string, own: string): readonly string[] {
  const beside = findMachines(workshop).value.filter(
    (machine) => machine !== join(workshop, own) && machine !== workshop,
  );
  return beside.flatMap((machine) => {
    const folder = readMachineFolder(machine).value;
    const records = folder && readRecords(folder.files, [], []).value;
    if (records === undefined) return [];
    const { name, numbers } = records.machine;
    return [name, ...numbers.map(({ stamped }) => stamped).filter((stamped) => stamped.length >= 4)];
  });
}
