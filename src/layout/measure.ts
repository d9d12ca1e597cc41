// What layout must be told: how wide a word is, and how large a photo.
import type { Face } from './placed.ts';

export interface Measure {
  /** Width of a text in ems (multiply by the type size); the text is one word or a few, without line ends. */
  readonly width: (text: string, face: Face) => number;
  /** Pixel size of a photo, when it is at hand. */
  readonly photo?: (file: string) => { readonly width: number; readonly height: number } | undefined;
}
