// `npm test`: types, lint, format and every test; the last line says how many passed and failed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));

interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

const checks: readonly { readonly name: string; readonly command: readonly string[] }[] = [
  { name: 'types', command: ['tsc', '-p', '.'] },
  { name: 'lint', command: ['oxlint', '--type-aware', '--deny-warnings'] },
  { name: 'format', command: ['prettier', '--check', '--log-level', 'warn', '.'] },
];

/** Runs a tool of this project with its output shown; true when it ended well. */
function runs(command: readonly string[]): boolean {
  const [tool = '', ...rest] = command;
  const path = join(root, 'node_modules', '.bin', tool);
  return spawnSync(path, rest, { cwd: root, stdio: 'inherit' }).status === 0;
}

function runTests(): Tally {
  const folder = mkdtempSync(join(tmpdir(), 'splitpin-tests-'));
  const report = join(folder, 'report.json');
  const ended = runs(['vitest', 'run', '--reporter=default', '--reporter=json', '--outputFile.json=' + report]);
  const tally = readTally(report);
  rmSync(folder, { recursive: true, force: true });
  // A run that breaks off outside a test (a leaked error, a file that cannot be loaded) is a failure as well.
  return ended || tally.failed > 0 ? tally : { ...tally, failed: 1 };
}

function readTally(report: string): Tally {
  try {
    const value: unknown = JSON.parse(readFileSync(report, 'utf8'));
    const number = (key: string): number => {
      const found: unknown = typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;
      return typeof found === 'number' ? found : 0;
    };
    const skipped = number('numPendingTests') + number('numTodoTests');
    return { passed: number('numPassedTests'), failed: number('numFailedTests'), skipped };
  } catch {
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

const results = checks.map((check) => {
  const passed = runs(check.command);
  if (!passed) console.error(check.name + ': failed');
  return passed;
});
const tests = runTests();
const nothingMayBeSkipped = process.argv.includes('--nothing-skipped');
if (tests.skipped > 0)
  console.log(String(tests.skipped) + ' skipped: a tool that they need is not installed (see README).');
const failed = tests.failed + results.filter((passed) => !passed).length + (nothingMayBeSkipped ? tests.skipped : 0);
const passed = tests.passed + results.filter(Boolean).length;
console.log(String(passed) + ' passed, ' + String(failed) + ' failed');
process.exitCode = failed === 0 ? 0 : 1;
