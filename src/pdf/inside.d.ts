// What the published types leave out of the two libraries that paper is made with, as far as we use it.

declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly codePoints: readonly number[];
  }
  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly capHeight: number;
    readonly bbox: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(text: string): {
      readonly glyphs: readonly Glyph[];
      readonly positions: readonly { readonly xAdvance: number }[];
      readonly advanceWidth: number;
    };
  }
  export function openSync(path: string): Font;
}

declare namespace PDFKit {
  interface PDFKitReference {
    compress: boolean;
    readonly id: number;
  }
  /** A font as it is being gathered for one document. */
  interface GatheredFont {
    readonly id: string;
    readonly subset: {
      /** Glyphs of the font in the order of their new numbers. */
      readonly glyphs: readonly number[];
      includeGlyph(id: number): number;
      /** The font file of the subset. */
      encode: () => Uint8Array;
    };
    readonly widths: number[];
    readonly unicode: (readonly number[])[];
    ref(): PDFKitReference;
  }
  interface PDFDocument {
    readonly _root: {
      readonly id: number;
      readonly data: Record<string, unknown> & {
        /** The list of pages, written when the document ends. */
        readonly Pages: { readonly id: number; readonly data: { readonly Kids: PDFKitReference[]; Count: number } };
      };
    };
    /** What the file says of itself, once it ends. */
    readonly _info: { readonly id: number };
    /** The mark of the file, worked out of what it says of itself. */
    readonly _id: Uint8Array;
    /** Writes where everything stands, when the last object has been written. */
    _finalize: () => void;
    readonly _font: GatheredFont;
    /** Opens a picture, once for each path. */
    openImage(path: string): {
      readonly label: string;
      readonly obj: PDFKitReference | null;
      embed(document: PDFDocument): void;
    };
    /** Objects begun and not yet written. */
    _waiting: number;
    /** Where each object begins in the file, in the order of their numbers; null until it is written. */
    readonly _offsets: (number | null)[];
    /** Length of the file so far. */
    readonly _offset: number;
    _write(bytes: Uint8Array): void;
    /** Called when the document ends. */
    endMetadata: () => void;
    addNamedEmbeddedFile(name: string, specification: unknown): void;
  }
}

declare namespace PDFKit.Mixins {
  interface PDFFont {
    font(src: import('fontkit').Font): this;
  }
}
