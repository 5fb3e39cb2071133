import { type Climate, type ClimateRow, MONTHS } from '../tables/place/climate-row';
import { lawShare, oddsOf, type Station, stationsAround, toStation } from './compared-station';
import { clamp, median, seasonOf } from './robust';

/** With fewer stations around nothing is held. */
const FEWEST = 5;
const LAPSE_K_PER_M = 0.0065;

/** How far a month may stand from what the stations around and its own season say. Our judgement, by the medians of all months. */
const SUN_BAND = 0.06;
const SUN_SEASON = 0.1;
const WARMTH_BAND_K = 2;
const SPREAD_BAND = 1.25;
const DIFFUSE_BAND = 1.4;

/**
 * A month of a typical year is one month of one real year, picked for each station alone, so that neighbors differ in it
 * by far more than their climates do. Here each month is held near the median of the nine stations around it, moved by what
 * the station itself usually differs from them in that season (the median of five months). Sun is compared as clearness,
 * diffuse sun as the odds of its share over the general law's, temperature at sea level. Gives the columns that change.
 */
export function heldFigures(rows: readonly ClimateRow[]): Map<string, Record<string, number>> {
  const stations = rows.map(toStation);
  return new Map(
    stations.flatMap((station): [string, Record<string, number>][] => {
      const around = stationsAround(station, stations);
      if (around.length < FEWEST) return [];
      return [[station.id, changed(station, held(station, around))]];
    }),
  );
}

function held(station: Station, around: readonly Station[]): Partial<Record<string, number[]>> {
  const { climate } = station;
  const clearness = around.map((one) => one.clearness);
  const middleK = MONTHS.map((_, m) => median(clearness.map((months) => months[m] ?? null)));
  const kRatio = station.clearness.map((k, m) => over(k, middleK[m]!));
  const ghi = climate.ghiKwhPerM2Day.map((published, m) => {
    const [ratio, season] = [kRatio[m]!, median(seasonOf(kRatio, m))];
    if (ratio === null || season === null) return published;
    const usual = clamp(season, 1 - SUN_SEASON, 1 + SUN_SEASON);
    const kept = clamp(ratio, usual - SUN_BAND, usual + SUN_BAND);
    return kept === ratio ? published : middleK[m]! * kept * station.outsideKwh[m]!;
  });
  const dhi = climate.diffuseKwhPerM2Day.map((published, m) => {
    const middle = median(around.map((one) => one.odds[m]!));
    const odds = station.odds[m]!;
    if (odds === null || middle === null) return published;
    const kept = clamp(odds, middle / DIFFUSE_BAND, middle * DIFFUSE_BAND);
    if (kept === odds && ghi[m] === climate.ghiKwhPerM2Day[m]) return published;
    const law = oddsOf(lawShare(ghi[m]! / station.outsideKwh[m]!, station.sunsetDeg[m]!));
    return (ghi[m]! * (law * kept)) / (1 + law * kept);
  });
  const low = ({ climate: { meanC }, elevationM }: Station, m: number) =>
    meanC[m]! + elevationM * LAPSE_K_PER_M;
  const warmer = MONTHS.map((_, m) => low(station, m) - median(around.map((one) => low(one, m)))!);
  const tmean = climate.meanC.map((published, m) => {
    const season = median(seasonOf(warmer, m))!;
    const kept = clamp(warmer[m]!, season - WARMTH_BAND_K, season + WARMTH_BAND_K);
    return published + kept - warmer[m]!;
  });
  const spread = (of: (one: Climate) => (number | null)[]) =>
    of(climate).map((published, m) => {
      const middle = median(around.map((one) => of(one.climate)[m]!));
      if (published === null || middle === null) return Number.NaN;
      return clamp(published, middle / SPREAD_BAND, middle * SPREAD_BAND);
    });
  const [ktsd, tsd] = [spread((one) => one.clearnessSpread), spread((one) => one.daySpreadK)];
  return { ghi, dhi, tmean, ktsd, tsd };
}

/** Columns whose figure moved by more than its last printed digit, and the design temperatures moved along with the months they come from. */
function changed({ climate }: Station, months: ReturnType<typeof held>): Record<string, number> {
  const published: Record<string, (number | null)[]> = {
    ghi: climate.ghiKwhPerM2Day,
    dhi: climate.diffuseKwhPerM2Day,
    tmean: climate.meanC,
    ktsd: climate.clearnessSpread,
    tsd: climate.daySpreadK,
  };
  const columns: Record<string, number> = {};
  for (const [name, values] of Object.entries(months)) {
    values!.forEach((value, m) => {
      const was = published[name]![m];
      if (was === null || was === undefined || Number.isNaN(value)) return;
      if (Math.abs(value - was) > 0.005) columns[`${name}_${MONTHS[m]}`] = Number(value.toFixed(3));
    });
  }
  const { meanC } = climate;
  const colder = Math.min(...months.tmean!) - Math.min(...meanC);
  const hotter = Math.max(...months.tmean!) - Math.max(...meanC);
  if (colder !== 0) columns.heat99_c = Number((climate.heat99C + colder).toFixed(1));
  if (hotter !== 0) columns.cool1_c = Number((climate.cool1C + hotter).toFixed(1));
  return columns;
}

function over(value: number | null, middle: number | null): number | null {
  return value === null || middle === null ? null : value / middle;
}
