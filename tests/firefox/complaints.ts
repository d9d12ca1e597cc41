// What Firefox complains of while pages are open: every script error, refusal of the policy and failed load in its own console, and every request.
import type { Marionette } from './marionette.ts';

/** Begins to note, for all pages from now on; the notes lie in Firefox itself. */
export function noteComplaints(firefox: Marionette, home: string): Promise<unknown> {
  return inFirefox(firefox, noting, home);
}

/** What was noted since the last asking. */
export async function complaints(firefox: Marionette): Promise<readonly string[]> {
  const said = await inFirefox(firefox, 'return globalThis.splitpinNotes.splice(0)');
  return Array.isArray(said) ? said.map(String) : ['Firefox gave no notes'];
}

/** Runs a script beside the pages, with the rights of the program. */
export async function inFirefox(firefox: Marionette, script: string, ...args: readonly unknown[]): Promise<unknown> {
  await firefox.send('Marionette:SetContext', { value: 'chrome' });
  try {
    return valueOf(await firefox.send('WebDriver:ExecuteScript', { script, args, sandbox: 'system' }));
  } finally {
    await firefox.send('Marionette:SetContext', { value: 'content' });
  }
}

export function valueOf(answer: unknown): unknown {
  return typeof answer === 'object' && answer !== null && 'value' in answer ? answer.value : undefined;
}

/**
 * Firefox has faults of its own in the same console, which name its own files: a message counts when a page of ours stands in it, or when
 * it is of a kind that only a page can cause. Warnings (flag 1) tell of slow days as well, and count only where a script did not load.
 */
const noting = `
  const [home] = arguments;
  const notes = globalThis.splitpinNotes = [];
  const ofPages = /^(?:CSP|CORS|Mixed Content|Script Loader)/;
  Services.console.registerListener({
    observe(message) {
      if (!(message instanceof Ci.nsIScriptError)) return;
      const { category, flags, sourceName, errorMessage } = message;
      const error = (flags & 1) === 0 && sourceName.startsWith(home);
      if (error || ofPages.test(category)) notes.push(category + ': ' + errorMessage);
    },
  });
  Services.obs.addObserver((subject) => {
    const { URI, loadInfo } = subject.QueryInterface(Ci.nsIHttpChannel);
    if (loadInfo.triggeringPrincipal?.isSystemPrincipal !== true) notes.push('request: ' + URI.spec);
  }, 'http-on-opening-request');
`;
