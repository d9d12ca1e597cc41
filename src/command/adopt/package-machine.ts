// The machine folder inside a package: which of its files are taken over, and under which names. Anything else in it is left where it is.
import { recordsFolder } from '../../handover/package-layout.ts';
import { doubledPaths, wrongPath } from '../../handover/package-paths.ts';
import { isMachineFolder, isRecord } from '../../source/machine-files.ts';
import type { OpenPackage, PackageFile } from '../open-package.ts';

/** A file with its path below the machine folder, and where it lies in the package. */
export interface TakenFile extends PackageFile {
  readonly from: string;
}

export interface PackagedMachine {
  /** Name of the machine folder. */
  readonly name: string;
  /** By path below the machine folder. */
  readonly files: readonly TakenFile[];
  /** Instruments of the former owner's workshop. */
  readonly shared?: TakenFile;
}

/** The machine that a package holds, or in sentences why none is taken from it. */
export function machineIn(
  { files }: OpenPackage,
  named: string | undefined,
): PackagedMachine | { readonly wrong: readonly string[] } {
  const machines = files.flatMap(({ path }) => {
    const match = /^([^/]+)\/machine\.yaml$/u.exec(below(path, recordsFolder) ?? '');
    return match?.[1] === undefined ? [] : [match[1]];
  });
  const [name, ...others] = named === undefined ? machines : machines.filter((one) => one === named);
  if (name === undefined) return { wrong: ['There is no machine in it: the package holds no records to go on with.'] };
  if (others.length > 0) return { wrong: [`There are ${String(machines.length)} machines in it; one is expected.`] };
  const taken = files.flatMap((file): readonly TakenFile[] => {
    const path = nameBelow(file.path, name);
    return path === undefined ? [] : [{ ...file, path, from: file.path }];
  });
  const shared = files.find(({ path }) => path === `${recordsFolder}/instruments.yaml`);
  const wrong = [
    ...taken.flatMap(({ path }) => {
      const why = wrongPath(path);
      return why === undefined ? [] : [`“${path}” ${why}.`];
    }),
    ...doubledPaths(taken.map(({ path }) => path)).map((path) => `“${path}” is in it twice, as some disks see it.`),
  ];
  if (wrong.length > 0) return { wrong };
  const around = shared === undefined ? {} : { shared: { ...shared, from: shared.path } };
  return { name, files: taken, ...around };
}

function nameBelow(path: string, machine: string): string | undefined {
  const file = below(path, `${recordsFolder}/${machine}`);
  if (file === undefined) return undefined;
  const inFolder = isMachineFolder(file) && !file.split('/').some((part) => part.startsWith('.'));
  return inFolder || isRecord(file) ? file : undefined;
}

function below(path: string, folder: string): string | undefined {
  return path.startsWith(`${folder}/`) ? path.slice(folder.length + 1) : undefined;
}
