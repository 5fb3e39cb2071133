import type { HeatingCooling } from './dwelling';
import { countedLine, type LoadLine, shownLine } from './load-lines';

interface Share {
  readonly label: string;
  readonly va: number;
}

/**
 * Heating and cooling under the optional method for new dwellings, NEC 220.82(C): only the largest of the shares counts,
 * the others are shown. Cooling 100 %; heat pump 100 %, with back-up heat 100 % + 65 % (the compressor left out where a
 * control keeps them apart); electric heat 65 % with fewer than four controls, 40 % with four or more; storage 100 %.
 */
export function largestShareLines(hvac: HeatingCooling, section: string): LoadLine[] {
  return largestOf(optionalShares(hvac), section);
}

/** The larger of heating and cooling, each at 100 % of its nameplate: NEC 220.60, and 220.83(B). */
export function largerWholeLines(hvac: HeatingCooling, section: string): LoadLine[] {
  const heatVa = heatPumpWithHeat(hvac, 1) + (hvac.spaceHeatVa ?? 0) + (hvac.continuousHeatVa ?? 0);
  const shares = [
    { label: 'Cooling at 100 %', va: hvac.coolingVa ?? 0 },
    { label: 'Heating at 100 %', va: heatVa },
  ];
  return largestOf(shares, section);
}

function optionalShares(hvac: HeatingCooling): Share[] {
  const few = (hvac.spaceHeatControls ?? 1) < 4;
  return [
    { label: 'Cooling at 100 %', va: hvac.coolingVa ?? 0 },
    {
      label: 'Heat pump at 100 % and back-up heat at 65 %',
      va: heatPumpWithHeat(hvac, 0.65),
    },
    {
      label: few ? 'Electric heat at 65 %' : 'Electric heat, four controls or more, at 40 %',
      va: (hvac.spaceHeatVa ?? 0) * (few ? 0.65 : 0.4),
    },
    { label: 'Storage or continuous heat at 100 %', va: hvac.continuousHeatVa ?? 0 },
  ];
}

function heatPumpWithHeat(hvac: HeatingCooling, share: number): number {
  const back = (hvac.supplementalVa ?? 0) * share;
  const apart = hvac.supplementalWithCompressor === false && back > 0;
  const compressor = hvac.heatPumpVa ?? 0;
  // Kept apart, only one of the two runs; the larger is the careful one.
  return apart ? Math.max(back, compressor) : compressor + back;
}

function largestOf(shares: readonly Share[], section: string): LoadLine[] {
  const there = shares.filter((share) => share.va > 0).sort((a, b) => b.va - a.va);
  return there.map((share, i) =>
    i === 0
      ? countedLine(share.label, share.va, section)
      : shownLine(`${share.label}, left out as smaller`, share.va, '220.60'),
  );
}
