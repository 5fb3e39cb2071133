import { expect, test } from 'vitest';
import { ratesOfReturn } from '../../../../src/bill/lifecycle/cash-flow';
import { sayRates } from '../../../../src/words/en/money/say-rates';

const said = (flow: number[], savings: number) =>
  sayRates({ flow, savings, rates: ratesOfReturn(flow) });

test('a route that saves nothing has no rate of return, whatever is left of it at the end', () => {
  const residual = [-4000, ...Array<number>(14).fill(-180), 900];
  expect(said(residual, 0)).toBe('none: it takes nothing off the bill');
});

test('a route that never earns back its cost has none either', () => {
  expect(said([-10_000, 100, 100, 100], 283)).toBe('none: it never earns back what it costs');
});

// Engineering-economy example: -700, 100, 175, 250, 325 has an IRR of 6.9107 % (from memory; the arithmetic is exact).
test('a rate is said with its unit, and two where there are two', () => {
  expect(said([-700, 100, 175, 250, 325], 700)).toBe('6.9 % a year above inflation');
  expect(said([-1000, 2500, -1540], 100)).toMatch(/none/);
  expect(said([-1000, 2500, -1540 + 50], 100)).toContain('%');
});
