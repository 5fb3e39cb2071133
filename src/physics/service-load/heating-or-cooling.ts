import type { HeatingCooling } from './dwelling';
import type { ClimateShare } from './line-is';
import { countedLine, type LoadLine, shownLine } from './load-lines';
import { heatPumpWithHeat } from './whole-shares';

interface Share {
  readonly of: ClimateShare;
  readonly va: number;
}

/**
 * Heating and cooling under the optional method for new dwellings, NEC 220.82(C): only the largest of the shares counts,
 * the others are shown. Cooling 100 %; heat pump 100 %, with back-up heat 100 % + 65 % (the compressor left out where a
 * control keeps them apart); electric heat 65 % with fewer than four controls, 40 % with four or more; storage 100 %.
 */
export function largestShareLines(hvac: HeatingCooling, section: string): LoadLine[] {
  const there = optionalShares(hvac)
    .filter((share) => share.va > 0)
    .sort((a, b) => b.va - a.va);
  return oneCountedLines(there, section);
}

/** The first counts; the others are shown as left out. */
export function oneCountedLines(shares: readonly Share[], section: string): LoadLine[] {
  return shares.map(({ of, va }, i) =>
    i === 0
      ? countedLine({ code: 'climate', of, leftOut: false }, va, section)
      : shownLine({ code: 'climate', of, leftOut: true }, va, '220.60'),
  );
}

function optionalShares(hvac: HeatingCooling): Share[] {
  const few = (hvac.spaceHeatControls ?? 1) < 4;
  return [
    { of: 'cooling-whole', va: hvac.coolingVa ?? 0 },
    {
      of: 'pump-and-backup',
      va: heatPumpWithHeat(hvac, 0.65),
    },
    {
      of: few ? 'electric-heat-few' : 'electric-heat-many',
      va: (hvac.spaceHeatVa ?? 0) * (few ? 0.65 : 0.4),
    },
    { of: 'storage-heat-whole', va: hvac.continuousHeatVa ?? 0 },
  ];
}
