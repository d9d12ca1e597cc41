// What was found in a filled form: plain data that a thread can hand over.

export interface FilledField {
  /** As the file names it. */
  readonly name: string;
  readonly kind: 'tick' | 'text';
  /** As it is now: of a tick `yes` or empty. */
  readonly value: string;
  /** As it was printed; absent where the program that saved the form dropped it. */
  readonly before?: string;
}

/** Why a file gives no answers, in a word. */
export type FormFault =
  'not a PDF' | 'damaged' | 'locked' | 'other kind of form' | 'no fields' | 'too much' | 'too long';

export type FormReading =
  | {
      readonly fields: readonly FilledField[];
      /** The text that our forms carry hidden. */
      readonly carries?: string;
    }
  | { readonly fault: FormFault };

/** The fault, and what to do about it, in sentences. */
export const faultSentences: Readonly<Record<FormFault, string>> = {
  'not a PDF': 'This is not a PDF, or only the beginning of one. Save the form again and take that.',
  damaged: 'This PDF cannot be read: it is damaged, or was saved in halves. Save the form again and take that.',
  locked: 'This PDF is locked with a password. Save a copy without one and take that.',
  'other kind of form':
    'This PDF keeps its answers in a second form of another kind (XFA) as well, so that they cannot be trusted to agree. Fill in the form as it was printed by `print --form`.',
  'no fields':
    'There are no fields in this PDF: it was printed anew or flattened, and what was typed is now only a picture. Take the file that was saved from the form itself, or type it in with `splitpin fill`.',
  'too much': 'This PDF unpacks to more than a form can be. It was not read further.',
  'too long': 'Reading this PDF took longer than a form can take. It was not read further.',
};
