// `npm test`: types, lint, format and every test; the last line says how many passed and failed.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));

interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
  /** What failed, a line each. */
  readonly lines: readonly string[];
}

interface Check {
  readonly name: string;
  readonly command: readonly string[];
}

const checks: readonly Check[] = [
  { name: 'types', command: ['tsc', '-p', '.'] },
  { name: 'lint', command: ['oxlint', '--type-aware', '--deny-warnings'] },
  { name: 'format', command: ['prettier', '--check', '--log-level', 'warn', '.'] },
  // Many tests run the compiled program; it is made before they all ask for it.
  { name: 'compiling', command: ['tsx', 'tests/set-up/compiled.ts'] },
];

function toolPath(tool: string): string {
  return join(root, 'node_modules', '.bin', tool);
}

/** Runs a check; what it says is shown whole when it has ended, for several run at a time. True when it ended well. */
async function passes({ name, command }: Check): Promise<boolean> {
  const [tool = '', ...rest] = command;
  const child = spawn(toolPath(tool), rest, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  const said: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece: Buffer) => said.push(piece));
  const code = await new Promise<number | null>((done) => {
    child.on('error', () => done(null));
    child.on('close', done);
  });
  if (code === 0) return true;
  console.error(Buffer.concat(said).toString() + name + ': failed');
  return false;
}

/** Runs a tool of this project with its output shown; true when it ended well. */
function runs(command: readonly string[]): boolean {
  const [tool = '', ...rest] = command;
  return spawnSync(toolPath(tool), rest, { cwd: root, stdio: 'inherit' }).status === 0;
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

/** What the reporter of the tests writes, as far as it is read. */
interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly message: string;
    readonly assertionResults: readonly {
      readonly fullName: string;
      readonly status: string;
      readonly failureMessages: readonly string[];
    }[];
  }[];
}

function readTally(path: string): Tally {
  if (!existsSync(path)) return { passed: 0, failed: 1, skipped: 0, lines: ['the tests ended without a report'] };
  const report: Report = JSON.parse(readFileSync(path, 'utf8'));
  const lines = report.testResults.flatMap((file) => {
    const name = relative(root, file.name);
    const fallen = file.assertionResults.filter((one) => one.status === 'failed');
    if (fallen.length === 0) return file.status === 'failed' ? [`${name}: ${firstLine(file.message)}`] : [];
    return fallen.map((one) => `${name} > ${one.fullName}: ${firstLine(one.failureMessages[0] ?? '')}`);
  });
  const skipped = report.numPendingTests + report.numTodoTests;
  return { passed: report.numPassedTests, failed: report.numFailedTests, skipped, lines };
}

function firstLine(text: string): string {
  return text.split('\n', 1).join('').slice(0, 200);
}

const results = await Promise.all(checks.map(passes));
const tests = runTests();
const nothingMayBeSkipped = process.argv.includes('--nothing-skipped');
if (tests.skipped > 0)
  console.log(String(tests.skipped) + ' skipped: a tool that they need is not installed (see README).');
// What failed stands at the very end, where it is looked for first.
const fallen = [...checks.filter((_, index) => results[index] !== true).map(({ name }) => name), ...tests.lines];
for (const line of fallen.slice(0, 40)) console.log('failed: ' + line);
const failed = tests.failed + results.filter((passed) => !passed).length + (nothingMayBeSkipped ? tests.skipped : 0);
const passed = tests.passed + results.filter(Boolean).length;
console.log(String(passed) + ' passed, ' + String(failed) + ' failed');
process.exitCode = failed === 0 ? 0 : 1;
