// Which files of a machine folder are what: told by where they lie and what they are called.

/** Folders of a machine that are looked into; anything else in the folder is the owner's own. */
export function isMachineFolder(file: string): boolean {
  return /^(maker|jobs|photos|documents)(\/|$)/.test(file);
}

export function isRecord(file: string): boolean {
  return /^(machine|instruments)\.yaml$|^story\.md$|^maker\/.+\.ya?ml$|^jobs\/.+\.md$/.test(file);
}

/** A text file where records are expected, under a name that is not read: most often a slip of the keyboard. */
export function isStray(file: string): boolean {
  return /^(machine|instruments)\.yml$|^maker\/.+\.md$|^jobs\/.+\.(ya?ml|txt|markdown|MD)$/.test(file);
}
