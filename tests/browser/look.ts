// Opens one page of a folder as its reader would, and notes everything that went wrong while it opened.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';

export interface View {
  readonly width: number;
  readonly scheme: 'light' | 'dark';
  readonly scripting?: boolean;
  /** As it would be printed. */
  readonly print?: boolean;
}

export interface Opened {
  readonly page: Page;
  /** Errors in the console, and requests that failed or left the folder. */
  readonly faults: readonly string[];
}

export async function openPage(browser: Browser, folder: string, file: string, view: View): Promise<Opened> {
  const context = await browser.newContext({
    viewport: { width: view.width, height: 800 },
    colorScheme: view.scheme,
    javaScriptEnabled: view.scripting ?? true,
  });
  context.setDefaultTimeout(240_000);
  const page = await context.newPage();
  if (view.print === true) await page.emulateMedia({ media: 'print' });
  const faults: string[] = [];
  const home = pathToFileURL(folder).href;
  page.on('console', (message) => void (message.type() === 'log' || faults.push(`console: ${message.text()}`)));
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.on('requestfailed', (request) => {
    // A picture still under way when the next page is opened is given up by the browser; one that is missing or refused says otherwise.
    const why = request.failure()?.errorText ?? 'unknown';
    if (why !== 'net::ERR_ABORTED') faults.push(`failed: ${request.url()} ${why}`);
  });
  page.on(
    'request',
    (request) => void (request.url().startsWith(home) || faults.push(`left the folder: ${request.url()}`)),
  );
  await page.goto(addressOf(folder, file));
  return { page, faults };
}

/** The address at which a file of a folder opens. */
export function addressOf(folder: string, file: string): string {
  return pathToFileURL(join(folder, file)).href;
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What the accessibility checker finds, in sentences: all of its rules (WCAG 2.2 A and AA and good practice), or some. */
export async function accessibilityFaults(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  await page.evaluate(axe);
  const only = rules === undefined ? '' : `runOnly: ${JSON.stringify(rules)},`;
  const found: unknown = await page.evaluate(
    `axe.run(document, { ${only} preload: false }).then(({ violations }) =>
      violations.flatMap(({ id, nodes }) => nodes.map((node) => id + ': ' + node.html.slice(0, 160))))`,
  );
  return Array.isArray(found) ? found.map(String) : ['the checker gave no answer'];
}
