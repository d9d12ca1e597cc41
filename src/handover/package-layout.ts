// Where everything lies in a package: the names that the writer, the verifier and the one who takes it over agree on.

/** Tag files of RFC 8493, and ours beside them. */
export const declarationFile = 'bagit.txt';
export const infoFile = 'bag-info.txt';
export const manifestFile = 'manifest-sha256.txt';
export const tagManifestFile = 'tagmanifest-sha256.txt';
export const readMeFile = 'read-me.txt';

/** Everything that is handed over; what stands beside it only describes it. */
export const payloadFolder = 'data';
/** The binder: `index.html`, `print/*.pdf`, `data/binder.json` and its schema. */
export const binderFolder = `${payloadFolder}/binder`;
/** Machine folders of the buyer's copy, one below it; instruments of a workshop stand beside it, as in a workshop. */
export const recordsFolder = `${payloadFolder}/records`;
export const tablesFolder = `${payloadFolder}/tables`;
export const formatsFolder = `${payloadFolder}/formats`;

/** In the machine folder: the hash of each of its records in order. The hash of this file is the fingerprint. */
export const fingerprintFile = 'records.sha256';

/** Keys of bag-info.txt that are ours. */
export const infoKeys = {
  machine: 'Splitpin-Machine',
  machineFolder: 'Splitpin-Machine-Folder',
  fingerprint: 'Splitpin-Fingerprint',
  copy: 'Splitpin-Copy',
} as const;
