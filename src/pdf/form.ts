// A sheet as a form: what each field asks, and what the file carries so that a filled form finds its way back.

/** A place of the sheet that can be filled in. */
export interface FormField {
  readonly kind: 'tick' | 'text';
  /** Read out by a screen reader and shown as a hint: item, unit, limit. */
  readonly asks: string;
  /** What the record says already, as written; of a tick, `yes`. */
  readonly given?: string;
}

export interface Form {
  /** The field of a blank by its permanent id; undefined where the sheet has a box that no record keeps. */
  readonly field: (id: string) => FormField | undefined;
  /** Short texts that travel hidden with the form: which machine, job, sheet and version it is of. */
  readonly carries: Readonly<Record<string, string>>;
}

/** Name of the hidden field that carries them. */
export const carrierName = 'splitpin';

/** A blank's id as the name of a field: a full stop would make two fields of it. */
export function fieldName(id: string): string {
  return id.replaceAll('%', '%25').replaceAll('.', '%2E');
}

/** The blank that a field of this name fills. */
export function blankOfField(name: string): string {
  return name.replaceAll('%2E', '.').replaceAll('%25', '%');
}
