// The pages of a folder in Firefox, gone through as a person does: by what is seen, by clicks and by keys.
import { setTimeout as pause } from 'node:timers/promises';
import { addressOf } from '../browser/look.ts';
import { complaints, inFirefox, noteComplaints, valueOf } from './complaints.ts';
import { startFirefox } from './start-firefox.ts';

export interface Look {
  readonly width: number;
  readonly scheme: 'light' | 'dark';
  /** Whether pages may run their scripts; they may unless told otherwise. */
  readonly scripting?: boolean;
}

export interface Pages {
  readonly open: (file: string) => Promise<void>;
  readonly back: () => Promise<void>;
  readonly look: (look: Look) => Promise<void>;
  /** What an expression gives in the page; a promise is waited for. */
  readonly read: (expression: string) => Promise<unknown>;
  /** Waits until a page is there whole and an expression gives something true in it. */
  readonly seen: (expression: string) => Promise<void>;
  /** What it waited for last, for whoever reads of a test that came to no end. */
  readonly lastWaited: () => string;
  /** Clicks the element that an expression gives, once it is there. */
  readonly click: (element: string) => Promise<void>;
  /** Empties a field and types into it. */
  readonly type: (element: string, text: string) => Promise<void>;
  /** Presses one key after another. */
  readonly press: (...keys: readonly string[]) => Promise<void>;
  /** Shows the open page with the style of its printed leaves. */
  readonly asPrinted: () => Promise<void>;
  /** The page as Firefox prints it. */
  readonly print: () => Promise<Buffer>;
  readonly complaints: () => Promise<readonly string[]>;
  readonly downloads: string;
  readonly close: () => Promise<void>;
}

export const keys = { tab: '\uE004', enter: '\uE007', escape: '\uE00C', end: '\uE010', right: '\uE014' } as const;

/** Starts Firefox and opens the first page. */
export async function openPages(folder: string): Promise<Pages> {
  const { marionette, downloads, stop } = await startFirefox();
  const { send, isOpen } = marionette;
  /** While one page follows another there is a moment without any, in which nothing can be asked. */
  const betweenPages = (error: unknown): undefined => {
    if (!isOpen()) throw error;
    return undefined;
  };
  await noteComplaints(marionette, addressOf(folder, ''));
  const read = async (expression: string): Promise<unknown> =>
    valueOf(await send('WebDriver:ExecuteScript', { script: `return ${expression}`, args: [] }));
  let waited = 'nothing';
  const seen = async (expression: string): Promise<void> => {
    waited = expression;
    const asked = `document.readyState === 'complete' && Boolean(${expression})`;
    while ((await read(asked).catch(betweenPages)) !== true) await pause(25);
  };
  const idOf = async (element: string): Promise<string> => {
    await seen(element);
    const reference: unknown = await read(element);
    const [id] = typeof reference === 'object' && reference !== null ? Object.values(reference) : [];
    if (typeof id !== 'string') throw new Error(`${element} is no element`);
    return id;
  };
  const click = async (element: string): Promise<void> =>
    void (await send('WebDriver:ElementClick', { id: await idOf(element) }));
  const press = async (...pressed: readonly string[]): Promise<void> => {
    const actions = pressed.flatMap((value) => [
      { type: 'keyDown', value },
      { type: 'keyUp', value },
    ]);
    await send('WebDriver:PerformActions', { actions: [{ type: 'key', id: 'keys', actions }] }).catch(betweenPages);
    await send('WebDriver:ReleaseActions').catch(betweenPages);
  };
  return {
    read,
    seen,
    click,
    press,
    downloads,
    lastWaited: () => waited,
    close: stop,
    open: async (file) => void (await send('WebDriver:Navigate', { url: addressOf(folder, file) })),
    back: async () => void (await send('WebDriver:Back')),
    look: async (look) => {
      await inFirefox(marionette, dressed, look);
      await seen(
        `innerWidth === ${String(look.width)} && matchMedia('(prefers-color-scheme: ${look.scheme})').matches`,
      );
    },
    type: async (element, text) => {
      const id = await idOf(element);
      await send('WebDriver:ElementClear', { id });
      await send('WebDriver:ElementSendKeys', { id, text });
    },
    asPrinted: async () => {
      await inFirefox(marionette, "gBrowser.selectedBrowser.browsingContext.mediumOverride = 'print'");
      await seen("matchMedia('print').matches");
    },
    print: async () => Buffer.from(String(valueOf(await send('WebDriver:Print'))), 'base64'),
    complaints: () => complaints(marionette),
  };
}

/** No window of Firefox is as narrow as a telephone; the page in it is made so. */
const dressed = `
  const [{ width, scheme, scripting }] = arguments;
  const browser = gBrowser.selectedBrowser;
  for (const side of ['width', 'min-width', 'max-width']) browser.style.setProperty(side, width + 'px');
  browser.browsingContext.mediumOverride = '';
  Services.prefs.setIntPref('layout.css.prefers-color-scheme.content-override', scheme === 'dark' ? 0 : 1);
  Services.prefs.setBoolPref('javascript.enabled', scripting !== false);
`;
