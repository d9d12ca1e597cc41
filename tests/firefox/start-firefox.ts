// Firefox as Debian has it, started without a window in a new profile that asks nothing of anybody. Without it these tests are skipped, and say so.
import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { comeIn, type Marionette } from './marionette.ts';

const executable = '/usr/bin/firefox-esr';

/** False where the package firefox-esr is not installed. */
export const hasFirefox = existsSync(executable);
if (!hasFirefox) console.warn('SKIPPED: the pages were not opened in Firefox, because firefox-esr is not installed.');

export interface Started {
  readonly marionette: Marionette;
  /** Where it puts what is saved. */
  readonly downloads: string;
  readonly stop: () => Promise<void>;
}

/** What is not as in any other Firefox: no first page, no updates, no looking for a network; nothing of what a page may do. */
const preferences = {
  // Those for tests would let pages read any file of the disk: stricter is what people have at home.
  'remote.prefs.recommended': false,
  'marionette.port': 0,
  'app.normandy.enabled': false,
  'app.update.disabledForTesting': true,
  'browser.aboutwelcome.enabled': false,
  'browser.download.alwaysOpenPanel': false,
  'browser.download.folderList': 2,
  'browser.newtab.preload': false,
  'browser.newtabpage.enabled': false,
  'browser.region.network.url': '',
  'browser.safebrowsing.downloads.remote.enabled': false,
  'browser.safebrowsing.malware.enabled': false,
  'browser.safebrowsing.phishing.enabled': false,
  'browser.search.update': false,
  'browser.shell.checkDefaultBrowser': false,
  'browser.startup.homepage_override.mstone': 'ignore',
  'browser.startup.page': 0,
  'datareporting.policy.dataSubmissionEnabled': false,
  'dom.ipc.processPrelaunch.enabled': false,
  'dom.push.connection.enabled': false,
  'extensions.systemAddon.update.enabled': false,
  'extensions.update.enabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'network.manage-offline-status': false,
  'services.settings.server': 'data:,nothing',
  'toolkit.telemetry.enabled': false,
} as const;

export async function startFirefox(): Promise<Started> {
  const profile = mkdtempSync(join(tmpdir(), 'splitpin-firefox-'));
  const downloads = join(profile, 'saved');
  mkdirSync(downloads);
  const lines = Object.entries({ ...preferences, 'browser.download.dir': downloads }).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});\n`,
  );
  writeFileSync(join(profile, 'user.js'), lines.join(''));
  const firefox = spawn(
    executable,
    ['--headless', '--no-remote', '--marionette', '--remote-allow-system-access', '--profile', profile],
    // Its own home, so that it neither reads nor leaves anything in ours.
    { env: { ...process.env, HOME: profile }, stdio: 'ignore' },
  );
  const ended = new Promise<void>((end) => {
    firefox.on('error', () => end());
    firefox.on('exit', () => end());
  });
  const kill = (): void => void firefox.kill('SIGKILL');
  process.on('exit', kill);
  const clear = async (): Promise<void> => {
    await ended;
    process.off('exit', kill);
    // Its helpers may write a last line while the folder goes.
    rmSync(profile, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
  };
  try {
    const marionette = await comeIn(await portOf(profile, firefox));
    await marionette.send('WebDriver:NewSession');
    // Nothing here waits for a time: what hangs is ended by the runner of the tests.
    const long = 600_000;
    await marionette.send('WebDriver:SetTimeouts', { implicit: 0, pageLoad: long, script: long });
    const stop = async (): Promise<void> => {
      // It may be gone before it has answered.
      await marionette.send('Marionette:Quit', { flags: ['eForceQuit'] }).catch(kill);
      marionette.close();
      await clear();
    };
    return { marionette, downloads, stop };
  } catch (error) {
    kill();
    await clear();
    throw error;
  }
}

/** It takes any port that is free and writes down which. */
async function portOf(profile: string, firefox: ChildProcess): Promise<number> {
  const file = join(profile, 'MarionetteActivePort');
  for (;;) {
    const port = existsSync(file) ? Number(readFileSync(file, 'utf8')) : 0;
    if (port > 0) return port;
    if (firefox.exitCode !== null || firefox.signalCode !== null) throw new Error('Firefox ended as it began');
    await pause(50);
  }
}
