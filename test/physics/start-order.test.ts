import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StartingLoad } from '../../src/physics/largest-start';
import { startCures } from '../../src/physics/start-cures';
import { startOrder } from '../../src/physics/start-order';

const well = { id: 'well', runningVa: 2400, startingVa: 12_000, selfStarting: true };
const furnace = { id: 'furnace', runningVa: 800, startingVa: 2000, selfStarting: true };
const lights = { id: 'lights', runningVa: 200, startingVa: 200, selfStarting: false };

function* permutations<T>(items: readonly T[]): Generator<T[]> {
  if (items.length === 0) yield [];
  for (let i = 0; i < items.length; i++) {
    const rest = [...items.slice(0, i), ...items.slice(i + 1)];
    for (const tail of permutations(rest)) yield [items[i]!, ...tail];
  }
}

function highestMoment(loads: readonly StartingLoad[]): number {
  let running = 0;
  let highest = 0;
  for (const load of loads) {
    highest = Math.max(highest, running + Math.max(load.startingVa, load.runningVa));
    running += load.runningVa;
  }
  return highest;
}

const anyLoad = fc.record({
  id: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
  runningVa: fc.integer({ min: 0, max: 6000 }),
  startingVa: fc.integer({ min: 0, max: 20_000 }),
  selfStarting: fc.boolean(),
});
const someLoads = fc.uniqueArray(anyLoad, { selector: (l) => l.id, maxLength: 5 });

describe('the order of starting', () => {
  test('puts the hardest start first, while little else runs', () => {
    const order = startOrder({ loads: [lights, furnace, well], surgeVa: 12_500 });
    expect(order.steps.map((s) => s.id)).toEqual(['well', 'furnace', 'lights']);
    expect(order.steps.map((s) => s.peakVa)).toEqual([12_000, 4400, 3400]);
    expect(order.steps.every((s) => s.fits)).toBe(true);
  });

  test('is never beaten by any other order, tried one by one', () => {
    fc.assert(
      fc.property(someLoads, (loads) => {
        const best = Math.min(...[...permutations(loads)].map(highestMoment));
        expect(startOrder({ loads, surgeVa: 10_000 }).peakVa).toBe(best);
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  test('names the pairs that must not start together', () => {
    // All run at 3400 VA; the well adds 9600, the furnace 1200.
    const loads = [well, furnace, lights];
    expect(startOrder({ loads, surgeVa: 13_500 }).keepApart).toEqual([['well', 'furnace']]);
    expect(startOrder({ loads, surgeVa: 14_200 }).keepApart).toEqual([]);
    expect(startOrder({ loads, surgeVa: 12_000 }).keepApart).toEqual([]);
  });
});

describe('cures for a start that is too hard', () => {
  const plan = { loads: [well, furnace, lights], softStartMultiple: 2, softStartable: ['well'] };

  test('are listed with what is left to carry', () => {
    const cures = startCures({ ...plan, surgeVa: 7000 });
    expect(cures.map((c) => [c.kind, c.peakVa, c.enough])).toEqual([
      ['nothing', 14_200, false],
      ['keep-starts-apart', 13_000, false],
      ['soft-starter', 7000, true],
      ['both', 5800, true],
      ['larger-source', 14_200, true],
    ]);
  });

  test('offer no soft starter for a motor that may not have one', () => {
    const cures = startCures({ ...plan, softStartable: [], surgeVa: 7000 });
    expect(cures.map((c) => c.kind)).toEqual(['nothing', 'keep-starts-apart', 'larger-source']);
  });

  test('never ask for more than doing nothing does', () => {
    fc.assert(
      fc.property(someLoads, (loads) => {
        const softStartable = loads.map((l) => l.id);
        const cures = startCures({ loads, surgeVa: 5000, softStartMultiple: 2, softStartable });
        for (const cure of cures) expect(cure.peakVa).toBeLessThanOrEqual(cures[0]!.peakVa);
      }),
      { seed: 20261125 },
    );
  });
});
