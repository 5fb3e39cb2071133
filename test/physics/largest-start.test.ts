import fc from 'fast-check';
import { expect, test } from 'vitest';
import { largestStart } from '../../src/physics/largest-start';

const well = { id: 'well', runningVa: 2400, startingVa: 12_000, selfStarting: true };
const fridge = { id: 'fridge', runningVa: 180, startingVa: 1000, selfStarting: true };
const saw = { id: 'saw', runningVa: 1500, startingVa: 7500, selfStarting: false };
const lights = { id: 'lights', runningVa: 100, startingVa: 100, selfStarting: false };

test('the largest start and the next that can meet it come on top of what runs', () => {
  const peak = largestStart({ loads: [lights, fridge, well, saw], startsKeptApart: false });
  expect(peak.runningVa).toBe(2400 + 180 + 1500 + 100);
  // The well starts by itself, and may do so while someone starts the saw.
  expect(peak.starting).toEqual(['well', 'saw']);
  expect(peak.peakVa).toBe(4180 + 9600 + 6000);
});

test('of loads that start by themselves, the two largest', () => {
  const peak = largestStart({ loads: [fridge, well, lights], startsKeptApart: false });
  expect(peak.starting).toEqual(['well', 'fridge']);
});

test('two loads that wait for a hand never start together', () => {
  const mower = { ...saw, id: 'mower' };
  const peak = largestStart({ loads: [saw, mower, lights], startsKeptApart: false });
  expect(peak.starting).toEqual(['saw']);
});

test('a large start by hand still meets the largest start that comes by itself', () => {
  const peak = largestStart({ loads: [fridge, saw], startsKeptApart: false });
  expect(peak.starting).toEqual(['saw', 'fridge']);
});

test('a control that keeps starts apart leaves only the largest', () => {
  const peak = largestStart({ loads: [fridge, well, saw], startsKeptApart: true });
  expect(peak.starting).toEqual(['well']);
  expect(peak.peakVa).toBe(2400 + 180 + 1500 + 9600);
});

test('after an automatic transfer every self-starting motor tries at once', () => {
  const peak = largestStart({ loads: [fridge, well, saw], startsKeptApart: false });
  expect(peak.allSelfStartingVa).toBe(4080 + 9600 + 820);
});

test('nothing to run gives nothing to start', () => {
  const none = largestStart({ loads: [], startsKeptApart: false });
  expect(none).toEqual({ runningVa: 0, peakVa: 0, starting: [], allSelfStartingVa: 0 });
});

test('adding a load never lowers the peak', () => {
  const load = fc.record({
    id: fc.string(),
    runningVa: fc.integer({ min: 0, max: 9000 }),
    startingVa: fc.integer({ min: 0, max: 30_000 }),
    selfStarting: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(load, { maxLength: 8 }), load, fc.boolean(), (loads, more, apart) => {
      const before = largestStart({ loads, startsKeptApart: apart });
      const after = largestStart({ loads: [...loads, more], startsKeptApart: apart });
      expect(after.peakVa).toBeGreaterThanOrEqual(before.peakVa);
      expect(before.peakVa).toBeGreaterThanOrEqual(before.runningVa);
    }),
    { seed: 20261125 },
  );
});
