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
      `Lighting and outlets, ${home.floorAreaFt2} ft2 x ${vaPerFt2} VA`,
      home.floorAreaFt2 * vaPerFt2,
      rules.unitLoadSection,
    ),
    countedLine(
      `Kitchen circuits, ${home.smallApplianceCircuits} x ${circuitVa} VA`,
      home.smallApplianceCircuits * circuitVa,
      '220.52(A)',
    ),
    countedLine(
      `Laundry circuit, ${home.laundryCircuits} x ${circuitVa} VA`,
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
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  const lines = [
    countedLine(`First ${first} VA at 100 %`, firstVa, demandSection),
    countedLine(
      `Next ${secondVa} VA at ${percent(rules.lightingSecondShare)}`,
      secondVa * rules.lightingSecondShare,
      demandSection,
    ),
  ];
  if (restVa === 0) return lines;
  const label = `Above ${second} VA at ${percent(rules.lightingRestShare)}`;
  return [...lines, countedLine(label, restVa * rules.lightingRestShare, demandSection)];
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
    countedLine(`First ${firstVa} VA at 100 %`, Math.min(loadVa, firstVa), section),
    countedLine(
      `Other ${restVa} VA at ${Math.round(restShare * 100)} %`,
      restVa * restShare,
      section,
    ),
  ];
}
