import type { HeatingCooling } from './dwelling';
import type { ClimateShare } from './line-is';

/** Heating or cooling at 100 % of its nameplate: only one of the two is counted, NEC 220.60. */
export interface WholeShare {
  readonly of: ClimateShare;
  readonly va: number;
  /** Largest compressor within it, VA; 0 without one. */
  readonly motorVa: number;
  /** Part of it that is four or more separately controlled room heaters, VA; 0 with fewer. */
  readonly manyHeatersVa: number;
}

const MANY_CONTROLS = 4;

/** Cooling and heating of a dwelling at 100 %, those that are there. */
export function wholeShares(hvac: HeatingCooling): WholeShare[] {
  const cooling = hvac.coolingVa ?? 0;
  const room = hvac.spaceHeatVa ?? 0;
  const pump = heatPumpWithHeat(hvac, 1);
  const compressorOff = keptApart(hvac) && (hvac.supplementalVa ?? 0) > (hvac.heatPumpVa ?? 0);
  const many = (hvac.spaceHeatControls ?? 1) >= MANY_CONTROLS;
  const shares = [
    {
      of: 'cooling-whole' as const,
      va: cooling,
      motorVa: Math.min(cooling, hvac.coolingMotorVa ?? cooling),
      manyHeatersVa: 0,
    },
    {
      of: 'heating-whole' as const,
      va: pump + room + (hvac.continuousHeatVa ?? 0),
      motorVa: compressorOff ? 0 : (hvac.heatPumpVa ?? 0),
      manyHeatersVa: many ? room : 0,
    },
  ];
  return shares.filter((share) => share.va > 0);
}

/** Compressor and `share` of its back-up heat; where a control keeps them apart, the larger of the two. VA. */
export function heatPumpWithHeat(hvac: HeatingCooling, share: number): number {
  const back = (hvac.supplementalVa ?? 0) * share;
  const compressor = hvac.heatPumpVa ?? 0;
  return keptApart(hvac) && back > 0 ? Math.max(back, compressor) : compressor + back;
}

const keptApart = (hvac: HeatingCooling) => hvac.supplementalWithCompressor === false;
