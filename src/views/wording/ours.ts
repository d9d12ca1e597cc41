// Whose words they are: what stands in content/ is ours and follows the dialect; what the owner wrote is never touched.
import type { Place } from '../../problem/problem.ts';
import type { ViewContext } from '../view.ts';

/** A text of content in the dialect of the print, or the owner's text as it stands. */
export function ours(context: ViewContext, at: Place, text: string): string {
  return at.file.startsWith('content/') ? context.say(text) : text;
}
