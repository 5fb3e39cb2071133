import type { Climate } from './climate';

/** A climate and its share in a blend; shares add up to 1. */
export interface StationShare {
  climate: Climate;
  share: number;
}

/**
 * The weighted mean of several climates, series by series. A month without a spread (polar night)
 * takes the mean of the stations that have one, or stays null.
 */
export function blendClimate(parts: readonly StationShare[]): Climate {
  const mean = (value: (climate: Climate) => number) =>
    parts.reduce((sum, { climate, share }) => sum + share * value(climate), 0);
  const months = (series: (climate: Climate) => number[]) =>
    Array.from({ length: 12 }, (_, m) => mean((climate) => series(climate)[m]!));
  return {
    ghiKwhPerM2Day: months((c) => c.ghiKwhPerM2Day),
    diffuseKwhPerM2Day: months((c) => c.diffuseKwhPerM2Day),
    clearnessSpread: Array.from({ length: 12 }, (_, m) => blendSpread(parts, m)),
    meanC: months((c) => c.meanC),
    rangeK: months((c) => c.rangeK),
    daySpreadK: months((c) => c.daySpreadK),
    winterSpreadK: mean((c) => c.winterSpreadK),
    summerSpreadK: mean((c) => c.summerSpreadK),
    clearnessLag1: mean((c) => c.clearnessLag1),
    temperatureLag1: mean((c) => c.temperatureLag1),
    heat99C: mean((c) => c.heat99C),
    cool1C: mean((c) => c.cool1C),
    heatingDegreeDays65F: mean((c) => c.heatingDegreeDays65F),
    coolingDegreeDays65F: mean((c) => c.coolingDegreeDays65F),
  };
}

function blendSpread(parts: readonly StationShare[], month: number): number | null {
  let sum = 0;
  let shares = 0;
  for (const { climate, share } of parts) {
    const spread = climate.clearnessSpread[month];
    if (spread === null || spread === undefined) continue;
    sum += share * spread;
    shares += share;
  }
  return shares > 0 ? sum / shares : null;
}
