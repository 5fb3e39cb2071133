// The two plain rules against the same days worked out apart from this program (see test/fixtures/dispatch-rows.ts), day
// repeated until the charge repeats, one settled day billed. Tolerance 1e-4 dollars: printed to four digits.
import { describe, expect, test } from 'vitest';
import { dayAheadRule } from '../../src/bill/dispatch/day-ahead-rule';
import { selfUseRule } from '../../src/bill/dispatch/self-use-rule';
import { timeRule } from '../../src/bill/dispatch/time-rule';
import { type DispatchRow, dispatchRows } from '../fixtures/dispatch-rows';
import { repeatDay } from '../fixtures/repeat-day';

const window = (h: number) => h % 24 >= 15 && h % 24 < 20;

/** A row's cost with its last day repeated as billed: the demand charge comes on top where there is one. */
const billed = (row: DispatchRow, run: ReturnType<typeof repeatDay>) => {
  if (!row.demand) return run.cost;
  const day = run.dispatch.importKwh.subarray(run.from, run.from + 24);
  const peak = Math.max(...day.filter((_, h) => window(h)));
  return row.demand.days * run.cost + row.demand.perKw * peak;
};

describe('the time rule', () => {
  // I2c is left out: its figure was worked out for a battery that may charge from the grid.
  for (const row of dispatchRows.filter((r) => r.name !== 'I2c')) {
    test(`${row.name} costs ${row.timeRule} dollars`, () => {
      expect(billed(row, repeatDay(row.problem, timeRule))).toBeCloseTo(row.timeRule, 4);
    });
  }
});

describe('the self-use rule', () => {
  for (const row of dispatchRows) {
    test(`${row.name} costs ${row.selfUseRule} dollars`, () => {
      expect(billed(row, repeatDay(row.problem, selfUseRule))).toBeCloseTo(row.selfUseRule, 4);
    });
  }
});

describe('the day-ahead rule sees only the past and keeps at least 99 % of the optimum of a day that repeats', () => {
  for (const row of dispatchRows) {
    test(row.name, () => {
      const run = repeatDay(row.problem, (long) => {
        if (!row.demand) return dayAheadRule(long);
        const hours = long.loadKwh.length;
        const perKw = Float64Array.from({ length: hours }, (_, h) =>
          window(h) ? row.demand!.perKw : 0,
        );
        // A new month begins on day 10: in the first the peak was set before there was a past to learn from.
        const monthOf = Uint8Array.from({ length: hours }, (_, h) => (h < 240 ? 1 : 2));
        return dayAheadRule(long, { perKw, monthOf });
      });
      const share = (row.noBattery - billed(row, run)) / (row.noBattery - row.optimum);
      expect(share).toBeGreaterThan(0.99);
      expect(share).toBeLessThan(1 + 1e-4);
    });
  }
});
