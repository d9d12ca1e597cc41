// Where a quote, bracket or brace was opened that nothing closes: parsers only say where they noticed.

/** Offset of what is still open at `until`; undefined where nothing is, as far as a plain reading of the text shows. */
export function leftOpen(text: string, until: number = text.length): number | undefined {
  const open: { readonly closes: string; readonly at: number }[] = [];
  let quote: { readonly mark: string; readonly at: number } | undefined;
  for (let at = 0; at < until; at += 1) {
    const character = text.charAt(at);
    if (quote !== undefined) {
      const doubled = quote.mark === "'" && text.charAt(at + 1) === "'";
      if ((character === '\\' && quote.mark === '"') || (character === "'" && doubled)) at += 1;
      else if (character === quote.mark) quote = undefined;
      continue;
    }
    if (character === '#' && /^$|\s/u.test(text.charAt(at - 1))) at = endOfLine(text, at);
    else if ((character === '"' || character === "'") && beginsValue(text, at)) quote = { mark: character, at };
    else if ((character === '[' || character === '{') && (open.length > 0 || beginsValue(text, at)))
      open.push({ closes: character === '[' ? ']' : '}', at });
    else if ((character === ']' || character === '}') && open.length > 0) {
      if (open.at(-1)?.closes !== character) return open.at(-1)?.at;
      open.pop();
    }
  }
  return quote?.at ?? open.at(-1)?.at;
}

function endOfLine(text: string, from: number): number {
  const end = text.indexOf('\n', from);
  return end < 0 ? text.length : end;
}

/** After a colon, a comma, a hyphen or what opens a list or group; or at the beginning of a line. */
function beginsValue(text: string, at: number): boolean {
  let before = at - 1;
  while (text.charAt(before) === ' ') before -= 1;
  const character = text.charAt(before);
  if (character === '[' || character === '{' || character === ',' || character === '\n' || character === '')
    return true;
  return (character === ':' || character === '-') && before < at - 1;
}
