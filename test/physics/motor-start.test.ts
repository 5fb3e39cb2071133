import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  startFromCodeLetter,
  startFromHorsepower,
  startFromLabelBand,
  startFromMultiple,
  startFromNameplate,
} from '../../src/physics/motor-start';

describe('the start of a motor', () => {
  test('takes the nameplate as it stands, without a range', () => {
    const start = startFromNameplate({ lockedRotorAmps: 66.2, volts: 230 });
    expect(start.amps).toEqual({ low: 66.2, likely: 66.2, high: 66.2 });
    expect(start.va.likely).toBeCloseTo(66.2 * 230, 9);
    expect(start.basis).toBe('nameplate');
  });

  test('has no answer for a code letter without an upper end', () => {
    const v = { hp: 1, kvaPerHpLow: 22.4, kvaPerHpHigh: null, volts: 230 };
    expect(startFromCodeLetter(v)).toBeNull();
  });

  test('from horsepower runs from four to eight times full-load current around the table', () => {
    const start = startFromHorsepower({ tableAmps: 58.8, volts: 115 });
    expect(start.amps.low).toBeCloseTo(4 * 9.8, 9);
    expect(start.amps.high).toBeCloseTo(8 * 9.8, 9);
    expect(start.va.likely).toBeCloseTo(58.8 * 115, 9);
  });

  test('from a band of labels takes its ends, and refuses ends in the wrong order', () => {
    const start = startFromLabelBand({ lowAmps: 70, highAmps: 85, volts: 240 });
    expect(start.va).toEqual({ low: 70 * 240, likely: 77.5 * 240, high: 85 * 240 });
    expect(() => startFromLabelBand({ lowAmps: 85, highAmps: 70, volts: 240 })).toThrow(RangeError);
  });

  test('from a multiple never falls below the running current', () => {
    const soft = { runningAmps: 15, volts: 240 };
    const start = startFromMultiple({ ...soft, multiple: { low: 1.5, likely: 2, high: 2.5 } });
    expect(start.amps).toEqual({ low: 22.5, likely: 30, high: 37.5 });
    const tooLow = { low: 0.9, likely: 1, high: 1 };
    expect(() => startFromMultiple({ ...soft, multiple: tooLow })).toThrow(RangeError);
  });

  test('refuses amps or volts that are nothing, naming the unit', () => {
    expect(() => startFromNameplate({ lockedRotorAmps: 0, volts: 230 })).toThrow(
      /lockedRotorAmps.*A/,
    );
    expect(() => startFromNameplate({ lockedRotorAmps: 5, volts: Number.NaN })).toThrow(RangeError);
  });

  test('keeps low, likely and high in order, and VA in step with amps', () => {
    const positive = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(positive, positive, (tableAmps, volts) => {
        const { amps, va } = startFromHorsepower({ tableAmps, volts });
        expect(amps.low).toBeLessThan(amps.likely);
        expect(amps.likely).toBeLessThan(amps.high);
        expect(va.high / volts).toBeCloseTo(amps.high, 6);
      }),
      { seed: 20261125 },
    );
  });
});
