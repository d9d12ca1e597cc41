// Every published row that a calculation answers for, run through its public entry with the row's own tolerance.
import { describe, expect, test } from 'vitest';
import { checkPublished } from '../../src/calc/proof.ts';
import { notRun } from '../../src/calc/proofs-not-run.ts';
import { proofs } from '../../src/calc/proofs.ts';
import { calculationById, calculations } from '../../src/calc/list.ts';
import { proved } from '../../src/calc/proved.ts';
import { coverageOf, provedRows } from '../../src/calc/proved-rows.ts';
import { provedLines } from '../../src/tools/proved.ts';
import { table } from '../../src/table/table.ts';

const checked = checkPublished();

describe('published rows', () => {
  const run = checked.filter((one) => one.state !== 'not run');
  test('several hundred rows are run', () => expect(run.length).toBeGreaterThan(700));

  test.each(
    run.map((one) => [one.table + ' ' + one.row + (one.how === 'memory' ? ' (from memory)' : ''), one] as const),
  )('%s', (_, one) => {
    expect(one.state, [one.states, one.published, one.computed, one.tolerance].join(' | ')).toBe('passed');
  });
});

describe('no row is left out in silence', () => {
  test.each(
    checked.filter((one) => one.state === 'not run').map((one) => [one.table + ' ' + one.row, one.why] as const),
  )('%s: %s', (_, why) => {
    expect(why).not.toBe('no calculation claims this row yet');
  });

  test('every reason and every proof meets a row', () => {
    for (const { table: id, rows } of [...notRun, ...proofs])
      expect(
        table(id).rows.some((row) => rows.test(row.id)),
        id + ' ' + rows.source,
      ).toBe(true);
  });

  test('a row that is listed as not run is not run by a proof that would pass it by chance', () => {
    for (const { table: id, rows } of notRun) {
      for (const row of table(id).rows.filter((one) => rows.test(one.id))) {
        expect(checked.find((one) => one.table === id && one.row === row.id)?.state, row.id).toBe('not run');
      }
    }
  });

  test('proofs name calculations and outputs that exist', () => {
    for (const proof of proofs) {
      const calculation = calculationById(proof.calculation);
      expect(calculation?.outputs[proof.output], proof.calculation + ' ' + proof.output).toBeDefined();
      expect(calculation?.tables, proof.calculation).toContain(proof.table);
    }
  });
});

describe('the check can fail', () => {
  test('what the site shows is what was found just now', () => {
    expect(proved).toBe(provedLines());
    expect(provedRows().length).toBe(checked.length);
  });

  test('coverage counts every run row once', () => {
    const counted = coverageOf(calculations.map((one) => one.id)).reduce(
      (sum, one) => sum + one.passed + one.failed,
      0,
    );
    expect(counted).toBe(checked.filter((one) => one.state !== 'not run').length);
  });

  test('a wrong figure lies outside the tolerances', () => {
    const outside = checked.filter(
      (one) =>
        one.published !== undefined &&
        one.published !== 0 &&
        /%|exact|mm$/.test(one.tolerance) &&
        !/^[5-9] %/.test(one.tolerance),
    );
    expect(outside.length).toBeGreaterThan(400);
    for (const one of outside)
      expect(Math.abs((one.computed ?? 0) * 1.06 - (one.published ?? 0)), one.row).toBeGreaterThan(
        0.025 * Math.abs(one.published ?? 0),
      );
  });
});
