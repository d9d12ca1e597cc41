// The one Markdown reader: CommonMark with tables and strikethrough; `5"`, `(c)` and `+-` stay as they were typed.
import MarkdownIt from 'markdown-it';

/** Deeper than any workshop needs; a file made to hurt is cut off here. */
const deepest = 40;

export const markdown = new MarkdownIt('default', {
  html: false,
  linkify: false,
  typographer: false,
  breaks: false,
  maxNesting: deepest,
});
markdown.validateLink = () => true;
