// The browser that pages are opened in: Chromium where the system has it. Without it these tests are skipped, and say so.
import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const executable = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find((path) =>
  existsSync(path),
);

/** False where no browser is installed. */
export const hasBrowser = executable !== undefined;
if (!hasBrowser) console.warn('SKIPPED: the pages were not opened in a browser, because no Chromium is installed.');

export function openBrowser(): Promise<Browser> {
  const place = executable === undefined ? {} : { executablePath: executable };
  return chromium.launch({
    ...place,
    timeout: 240_000,
    args: ['--no-sandbox', '--disable-dev-shm-usage', '--disable-background-networking'],
  });
}
