import type { HourLoad, PeakFactors } from '../../bill/tariff/peak-factors';
import { peakFactors } from '../../bill/tariff/peak-factors';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Home } from '../../home/home';
import { seasonOf } from '../../home/season-of';
import { ownSolarKw } from '../../home/solar/own-solar';
import { MONTH_OF_DAY } from '../../physics/weather/calendar';
import type { HouseYear } from './house-year';

/**
 * What the peaks of this home are over its highest hour: by the highest use told of the meter, which hides nothing
 * unless its own panels stood before it; else by the loads of that hour.
 */
export function peakFactorsOf(home: Home, tariff: Tariff, { loadKwh }: HouseYear): PeakFactors {
  const { facts, loads } = home;
  const at = loadKwh.reduce((best, kwh, h) => (kwh > loadKwh[best]! ? h : best), 0);
  const season = seasonOf(MONTH_OF_DAY[Math.floor(at / 24)]!);
  const metered = facts.told('bill-peak-kw') && ownSolarKw(facts) === 0;
  return peakFactors(tariff, {
    hourKw: loadKwh[at]!,
    meteredKw: metered ? facts.number('bill-peak-kw') : null,
    loads: loads
      .filter((load) => load.onlyInOutage !== true)
      .map(
        (load): HourLoad => ({
          kwh: load.kwhPerDay[season].value * load.shape[at % 24]!,
          runningKw: load.runningWatts.value / 1000,
        }),
      ),
  });
}

/** How the peaks of a demand charge are known: by the meter, not from hours, or estimated as so many times the highest hour. */
export type PeaksKnown =
  | { readonly code: 'by-the-meter' | 'not-from-hours' }
  | { readonly code: 'estimated'; readonly times: number };

/** The same for whoever reads the plan; null where no charge hides a peak. */
export function peaksKnown(home: Home, tariff: Tariff, factors: PeakFactors): PeaksKnown | null {
  if (tariff.demand === undefined || tariff.demand.length === 0) return null;
  const told = home.facts.told('bill-peak-kw') && ownSolarKw(home.facts) === 0;
  if (told) return { code: 'by-the-meter' };
  const known = factors.filter((factor) => factor !== null);
  if (known.length < factors.length) return { code: 'not-from-hours' };
  const times = Math.max(...known);
  return times > 1.005 ? { code: 'estimated', times } : null;
}
