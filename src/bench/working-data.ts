// What the page of a working carries, read from its text: refused as a whole when it is not what the page was made with.

import type { Width } from '../calc/typed-figure.ts';

type Texts = Readonly<Record<string, string>>;

export interface WorkingOfPage {
  readonly id: string;
  readonly values: Texts;
  readonly from: Texts;
  /** How wide the figures of an input are, where they are. */
  readonly widths: Readonly<Record<string, readonly (Width | null)[]>>;
}

export interface Chosen {
  readonly name: string;
  readonly says: string;
  readonly values: Readonly<Record<string, Texts>>;
}

export interface WorkingData {
  readonly workings: readonly WorkingOfPage[];
  readonly passed: readonly {
    readonly from: string;
    readonly output: string;
    readonly to: string;
    readonly input: string;
  }[];
  readonly choice?: { readonly label: string; readonly among: readonly Chosen[] };
  readonly units: boolean;
  /** Units by those in which the fields of this machine ask. */
  readonly asked: Texts;
  readonly words: readonly { readonly uk: string; readonly us: string }[];
}

/** The data of a page; undefined when it cannot be read. */
export function readWorkingData(text: string): WorkingData | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return isWorkingData(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

function isWorkingData(value: unknown): value is WorkingData {
  return (
    typeof value === 'object' &&
    value !== null &&
    'workings' in value &&
    'passed' in value &&
    'units' in value &&
    'asked' in value &&
    'words' in value
  );
}
