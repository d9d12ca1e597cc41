// A glyph's outline, which the published types leave out and the drawings' lettering is made of.
declare module 'fontkit' {
  interface Glyph {
    readonly path: { toSVG(): string };
  }
}
