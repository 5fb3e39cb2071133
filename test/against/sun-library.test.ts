import * as SunCalc from 'suncalc';
import { describe, expect, test } from 'vitest';
import { sunPosition } from '../../src/physics/sun/sun-position';
import { sunTimes } from '../../src/physics/sun/sun-times';

// The independent npm library suncalc, after Meeus, Astronomical Algorithms. Its altitude is bent by
// the air (Saemundsson's formula, as Meeus gives it), so the same bend is put on ours to compare.
const bentBy = (h: number) => 1.02 / Math.tan(((h + 10.3 / (h + 5.11)) * Math.PI) / 180) / 60;

const LATITUDES = [64.8, 40, 0, -33.9, -54.8];
const LON = -100;

describe.each(LATITUDES)('over a year at latitude %f', (latDeg) => {
  test('altitude and azimuth agree within 0.03 degree every seventh hour while the sun is up', () => {
    let compared = 0;
    for (let hour = 0; hour < 8760; hour += 7) {
      const when = new Date(Date.UTC(2026, 0, 1, hour));
      const ours = sunPosition({ unixSeconds: when.getTime() / 1000, latDeg, lonDeg: LON });
      if (ours.elevationDeg < 5) continue;
      const theirs = SunCalc.getPosition(when, latDeg, LON);
      const seen = ours.elevationDeg + bentBy(ours.elevationDeg);
      expect(Math.abs(seen - theirs.altitude)).toBeLessThan(0.03);
      const turn = Math.abs(ours.azimuthDeg - theirs.azimuth);
      const arc = Math.min(turn, 360 - turn) * Math.cos((ours.elevationDeg * Math.PI) / 180);
      expect(arc).toBeLessThan(0.03);
      compared++;
    }
    expect(compared).toBeGreaterThan(400);
  });

  test('sunrise and sunset agree within a minute and a half every fifth day', () => {
    for (let day = 0; day < 365; day += 5) {
      const noon = new Date(Date.UTC(2026, 0, 1 + day, 19));
      const local = new Date(Date.UTC(2026, 0, 1 + day));
      const ours = sunTimes({
        year: local.getUTCFullYear(),
        month: local.getUTCMonth() + 1,
        day: local.getUTCDate(),
        latDeg,
        lonDeg: LON,
        utcOffsetH: -7,
      });
      const theirs = SunCalc.getTimes(noon, latDeg, LON);
      expect(Math.abs(ours.sunrise! - theirs.sunrise!.getTime() / 1000)).toBeLessThan(90);
      expect(Math.abs(ours.sunset! - theirs.sunset!.getTime() / 1000)).toBeLessThan(90);
    }
  });
});

test('polar day and polar night are told apart, with null and not NaN, as the library has them', () => {
  for (const [latDeg, month, up] of [
    [71.3, 6, true],
    [71.3, 12, false],
    [-75, 6, false],
    [-75, 12, true],
  ] as const) {
    const ours = sunTimes({ year: 2026, month, day: 21, latDeg, lonDeg: LON, utcOffsetH: -7 });
    const theirs = SunCalc.getTimes(new Date(Date.UTC(2026, month - 1, 21, 19)), latDeg, LON);
    expect(ours.sunrise).toBeNull();
    expect(ours.sunset).toBeNull();
    expect(ours.upAllDay).toBe(up);
    expect(up ? theirs.alwaysUp : theirs.alwaysDown).toBe(true);
  }
});
