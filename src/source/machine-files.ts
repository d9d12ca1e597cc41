// Which files of a machine folder are what: told by where they lie and what they are called.

/** Folders of a machine that are looked into; anything else in the folder is the owner's own. */
export function isMachineFolder(file: string): boolean {
  return /^(maker|jobs|photos|documents|hold-points|cautions|procedures|schedules|order|faults)(\/|$)/.test(file);
}

/** What a machine adds to the content: checks, cautions, procedures, schedules, edges of the order of work, causes and tests. */
export function isOwnContent(file: string): boolean {
  return /^(hold-points|cautions|procedures|schedules|order|faults)\/.+\.md$/.test(file);
}

export function isRecord(file: string): boolean {
  const own = isOwnContent(file);
  return (
    own ||
    /^(machine|instruments|workshop|wiring|adopted)\.yaml$|^story\.md$|^maker\/.+\.ya?ml$|^jobs\/.+\.md$/.test(file)
  );
}

/** A text file where records are expected, under a name that is not read: most often a slip of the keyboard. */
export function isStray(file: string): boolean {
  return /^(machine|instruments|workshop|wiring)\.yml$|^maker\/.+\.md$|^jobs\/.+\.(ya?ml|txt|markdown|MD)$/.test(file);
}
