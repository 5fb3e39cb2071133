import { describe, expect, it } from 'vitest';
import { ladderGains } from '../../../src/outage/walk/ladder-gain';
import { batteryOnly } from './made-up-system';

/** No loss, and no limit that a load of 1 kW meets. */
const limits = {
  chargeKw: 5,
  dischargeKw: 5,
  chargeEfficiency: 1,
  dischargeEfficiency: 1,
  idleKw: 0,
};

describe('what each rung of the ladder buys', () => {
  it('is the extra hours of a flat load in the dark, by hand', () => {
    const hours = 240;
    const kw = (value: number) => new Float64Array(hours).fill(value);
    const record = { loadsKw: [kw(0.2), kw(0.3), kw(0.5)], solarKw: kw(0) };
    const ladder = [
      { load: 2, offBelow: 0.75 },
      { load: 1, offBelow: 0.25 },
    ];
    const system = { ...batteryOnly(20), battery: { capKwh: 20, limits }, ladder };
    const walk = { system, record, outageHours: 240, startKwh: 20, startShare: 0.5 };
    const got = ladderGains({ ...walk, starts: [0, 5] });
    // 1 kW: 20 h. First rung: 1 kW to below 15 kWh (6 h, as at 15.0 it is not below), then 0.5 kW
    // for 14 / 0.5 = 28 h. Second: 0.5 kW from 14 to below 5 kWh (19 h, to 4.5), then 0.2 kW: 22 h
    expect(got.map((gain) => gain.hoursServed)).toEqual([20, 6 + 28, 6 + 19 + 22]);
    expect(got.map((gain) => gain.gainedHours)).toEqual([0, 14, 13]);
    expect(ladderGains({ ...walk, starts: [] })).toEqual([]);
  });

  it('goes by the start hour of which so many are no better', () => {
    const hours = 240;
    const kw = (value: number) => new Float64Array(hours).fill(value);
    // From hour 100 on the base load is ten times as large.
    const base = kw(0.2).fill(2, 100);
    const record = { loadsKw: [base, kw(0.3)], solarKw: kw(0) };
    const ladder = [{ load: 1, offBelow: 2 }];
    const system = { ...batteryOnly(20), battery: { capKwh: 20, limits }, ladder };
    const starts = [0, 0, 0, 0, 0, 0, 0, 0, 0, 120];
    const served = (startShare: number) =>
      ladderGains({ system, record, starts, outageHours: 240, startKwh: 20, startShare }).map(
        (gain) => gain.hoursServed,
      );
    // 0.5 kW: 40 h; 0.2 kW: 100 h. From hour 120 on 2.3 kW: 8 whole hours; 2 kW: 10 h.
    expect(served(0.5)).toEqual([40, 100]);
    expect(served(0.1)).toEqual([8, 10]);
  });
});
