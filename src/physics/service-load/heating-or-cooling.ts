import type { HeatingCooling } from './dwelling';
import { countedLine, type LoadLine, shownLine } from './load-lines';
import { heatPumpWithHeat } from './whole-shares';

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
  const there = optionalShares(hvac)
    .filter((share) => share.va > 0)
    .sort((a, b) => b.va - a.va);
  return oneCountedLines(there, section);
}

/** The first counts; the others are shown as left out. */
export function oneCountedLines(shares: readonly Share[], section: string): LoadLine[] {
  return shares.map((share, i) =>
    i === 0
      ? countedLine(share.label, share.va, section)
      : shownLine(`${share.label}, left out as smaller`, share.va, '220.60'),
  );
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
