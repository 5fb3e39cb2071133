import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatPumpHours, inputShare, RATED_COP } from '../../../src/home/heat/heat-pump';
import { seasonOf } from '../../../src/home/season-of';
import { climateHours, hardDaysC } from '../../../src/home/weather/climate-hours';
import { hourlyLoadKw } from '../../../src/home/weather/hourly-load';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { weatherLoadKw } from '../../../src/home/weather/weather-load';
import { MONTH_OF_DAY } from '../../../src/physics/weather/calendar';
import { allStations } from '../../../src/tables/place/climate';
import { planOf } from '../../households/read-household';

const { home } = planOf('ridge-road');
const { climate } = home.site.place;
const pump = home.loads.find((load) => load.id === 'heat-pump')!;
const strips = home.loads.find((load) => load.id === 'heat-strips')!;
const on = (load: typeof pump) => ({ ...load, offInOutage: false });

describe('a heat pump, hour by hour', () => {
  // By hand: 24 kWh on a day of -5 C, design -15 C, so 1 kW all day. need(-5) = 23.33/33.33 = 0.7, need(5) = 0.4.
  // At 5 C (41 F) the published input is 1.044187/0.993747 = 1.050758, at -5 C (23 F) 1.256243/0.993747 = 1.264148.
  test('by hand: the kWh of an hour are the heat needed times the input for a unit of heat', () => {
    const day = { hardDayKwh: 24, hardDayC: -5, runningKw: 3, designC: -15 };
    const { pumpKw } = heatPumpHours(day);
    expect(pumpKw(-5)).toBeCloseTo(1, 12);
    expect(pumpKw(5)).toBeCloseTo((0.39994 / 0.69997) * (1.050758 / 1.264148), 4);
    expect(pumpKw(18.33)).toBe(0);
  });

  // By hand: at 1 kW all day and a machine of 1 kW the pump is at its limit on the hard day itself, at -5 C (23 F):
  // full = 0.7 A / capacity(-5). What it lacks 10 K colder is made with 1 kWh of strips for each 3.35 of its own heat.
  test('by hand: strips give what the pump lacks below the temperature it keeps up to', () => {
    const hours = heatPumpHours({ hardDayKwh: 24, hardDayC: -5, runningKw: 0.1, designC: -15 });
    expect(hours.keepsUpToC).toBeCloseTo(-5, 6);
    const a = 1 / (0.69997 * 1.264148);
    const capacityOver = 0.509747 / 0.696207; // 5 F over 23 F, from the coefficients
    expect(hours.beyondKw(-15)).toBeCloseTo(RATED_COP * a * (1 - 0.69997 * capacityOver), 2);
    expect(hours.beyondKw(-4)).toBe(0);
    expect(hours.pumpKw(-15)).toBeCloseTo(hours.pumpKw(-5), 6);
  });

  test('a colder hour never needs less, with strips or without', () => {
    const whole = weatherLoadKw([on(pump), on(strips)], climate);
    const alone = weatherLoadKw([pump], climate);
    const pair = fc.tuple(
      fc.double({ min: -45, max: 25, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
    );
    fc.assert(
      fc.property(pair, ([airC, kelvin]) => {
        if (airC > 15) return;
        expect(whole(airC - kelvin)).toBeGreaterThanOrEqual(whole(airC) - 1e-12);
        expect(alone(airC - kelvin)).toBeGreaterThanOrEqual(alone(airC) - 1e-12);
      }),
    );
  });

  test('takes strips only in colder hours than it can heat, and only where we were told of them', () => {
    const { heatsBy, ...untold } = on(strips);
    expect(heatsBy).toBe('strips');
    const [pumpOnly, both, doubt] = [[pump], [pump, on(strips)], [pump, untold]].map((loads) =>
      weatherLoadKw(loads, climate),
    );
    const { hardCold } = hardDaysC(climate);
    expect(both!(hardCold)).toBeCloseTo(pumpOnly!(hardCold), 12);
    expect(both!(-25)).toBeGreaterThan(pumpOnly!(-25) + 1);
    expect(doubt!(-25)).toBe(pumpOnly!(-25));
    // 9.6 kW of strips give no more than that.
    expect(both!(-60)).toBeCloseTo(pumpOnly!(-60) + 9.6, 9);
  });
});

describe('over a winter', () => {
  /** kWh of December to February over 40 drawn years. */
  const winterKwh = (load: typeof pump) => {
    const hours = hourlyLoadKw([load], new SyntheticYears(home, 40).airC(), climate);
    return hours.reduce((sum, kw, i) => {
      const month = MONTH_OF_DAY[Math.floor(i / 24) % 365]!;
      return seasonOf(month) === 'winter' ? sum + kw : sum;
    }, 0);
  };
  const { heating, heatPump } = climateHours(climate);
  const { winter, mild, summer } = pump.kwhPerDay;
  const byDegrees = winter.value * (heating.winter[1] / heatPump.winter[1]);
  const plain = {
    ...pump,
    heatsBy: undefined,
    kwhPerDay: {
      winter: { ...winter, value: byDegrees, high: Math.max(byDegrees, winter.high) },
      mild,
      summer,
    },
  };

  test('the kWh of a pump that keeps up are those of degree hours within 2 %: the weather only shares them out', () => {
    const { runningWatts } = pump;
    const large = { ...pump, runningWatts: { ...runningWatts, value: 4 * runningWatts.value } };
    expect(Math.abs(winterKwh(large) / winterKwh(plain) - 1)).toBeLessThan(0.02);
  });

  test('a usual pump, at its highest draw in the coldest hours, takes up to 5 % less', () => {
    const less = 1 - winterKwh(pump) / winterKwh(plain);
    expect(less).toBeGreaterThan(0);
    expect(less).toBeLessThan(0.05);
  });

  test('a cold hour takes more than its share of degree hours, a mild one less', () => {
    const [byPump, degrees] = [weatherLoadKw([pump], climate), weatherLoadKw([plain], climate)];
    const { hardCold } = hardDaysC(climate);
    expect(byPump(hardCold)).toBeGreaterThan(1.05 * degrees(hardCold));
    expect(byPump(5)).toBeLessThan(degrees(5));
  });

  test('no station is asked for more than a day, and a hard day below freezing has more than degree hours', () => {
    for (const station of allStations()) {
      const hours = climateHours(station.climate);
      const [by, pumped] = [hours.heating.winter[1], hours.heatPump.winter[1]];
      expect(pumped).toBeLessThanOrEqual(24);
      if (hardDaysC(station.climate).hardCold < 0) expect(pumped, station.name).toBeGreaterThan(by);
      expect(inputShare(station.climate.heat99C)).toBeGreaterThan(0);
    }
  });
});
