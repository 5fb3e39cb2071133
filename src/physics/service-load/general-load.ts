import { requireWithin } from '../../quantity/require-within';
import type { DwellingLoads, ServiceLoadRules } from './dwelling';
import { countedLine, type LoadLine } from './load-lines';

/** Lighting and receptacles by floor area, kitchen circuits, laundry circuit: all at 100 %. VA. */
export function generalLines(home: DwellingLoads, rules: ServiceLoadRules): LoadLine[] {
  requireWithin('floorAreaFt2', home.floorAreaFt2, { above: 0, atMost: 50_000, unit: 'ft2' });
  requireWithin('smallApplianceCircuits', home.smallApplianceCircuits, { atLeast: 2, unit: '' });
  requireWithin('laundryCircuits', home.laundryCircuits, { atLeast: 1, unit: '' });
  const { vaPerFt2, circuitVa } = rules;
  return [
    countedLine(
      { code: 'lighting', ft2: home.floorAreaFt2, vaPerFt2 },
      home.floorAreaFt2 * vaPerFt2,
      rules.unitLoadSection,
    ),
    countedLine(
      { code: 'kitchen-circuits', circuits: home.smallApplianceCircuits, circuitVa },
      home.smallApplianceCircuits * circuitVa,
      '220.52(A)',
    ),
    countedLine(
      { code: 'laundry-circuits', circuits: home.laundryCircuits, circuitVa },
      home.laundryCircuits * circuitVa,
      '220.52(B)',
    ),
  ];
}

/** Demand of the general load: first step whole, second at 35 %, the rest at 25 % (standard method). VA. */
export function lightingDemandLines(generalVa: number, rules: ServiceLoadRules): LoadLine[] {
  const { lightingFirstVa: first, lightingSecondVa: second, demandSection } = rules;
  const firstVa = Math.min(generalVa, first);
  const secondVa = Math.min(Math.max(0, generalVa - first), second - first);
  const restVa = Math.max(0, generalVa - second);
  const lines = [
    countedLine({ code: 'first', va: first }, firstVa, demandSection),
    countedLine(
      { code: 'next', va: secondVa, share: rules.lightingSecondShare },
      secondVa * rules.lightingSecondShare,
      demandSection,
    ),
  ];
  if (restVa === 0) return lines;
  const is = { code: 'above', va: second, share: rules.lightingRestShare } as const;
  return [...lines, countedLine(is, restVa * rules.lightingRestShare, demandSection)];
}

/** Two-step demand of the optional methods: the first VA whole, the rest at 40 %. */
export function twoStepLines(
  loadVa: number,
  firstVa: number,
  restShare: number,
  section: string,
): LoadLine[] {
  const restVa = Math.max(0, loadVa - firstVa);
  return [
    countedLine({ code: 'first', va: firstVa }, Math.min(loadVa, firstVa), section),
    countedLine({ code: 'other', va: restVa, share: restShare }, restVa * restShare, section),
  ];
}
