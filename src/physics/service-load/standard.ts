import { applianceLines } from './appliance-lines';
import { cookingDemandVa } from './cooking-demand';
import type { CookingDemand, DwellingLoads, ServiceLoadRules } from './dwelling';
import { generalLines, lightingDemandLines } from './general-load';
import { oneCountedLines } from './heating-or-cooling';
import { largestMotorExtra } from './largest-motor';
import { countedLine, type LoadLine, type ServiceLoad, serviceLoad, shownLine } from './load-lines';
import { wholeShares } from './whole-shares';

/**
 * Dwelling load by the standard method, NEC Article 220 Part III, line by line, VA and A.
 * `otherMotorVa` is the running VA of the largest motor that is no compressor of heating or cooling. Those compressors
 * are motors too: a quarter of the largest of all is added (220.50, 430.24). The larger of heating and cooling is the one
 * with which the sum is larger; where the edition has it so, a compressor left out still counts as the largest motor (220.60).
 * A planning figure: the edition in force, local changes and a licensed electrician decide.
 */
export function standardServiceLoad(
  home: DwellingLoads & { readonly otherMotorVa?: number },
  rules: ServiceLoadRules,
  cookingTable: readonly CookingDemand[],
): ServiceLoad {
  const general = generalLines(home, rules);
  const generalVa = general.reduce((sum, line) => sum + line.va, 0);
  const lines = [
    ...general.map((line) => ({ ...line, counted: false })),
    shownLine({ code: 'sum-of-these' }, generalVa, rules.demandSection),
    ...lightingDemandLines(generalVa, rules),
    ...cookingLine(home, cookingTable),
    ...dryerLine(home, rules),
    ...applianceLines(home.appliances, rules),
    ...chargerLines(home, rules),
    ...heatingCoolingMotorLines(home, rules),
  ];
  return serviceLoad(lines, home.volts);
}

function heatingCoolingMotorLines(
  home: DwellingLoads & { readonly otherMotorVa?: number },
  rules: ServiceLoadRules,
): LoadLine[] {
  const shares = wholeShares(home.heatingCooling);
  const other = home.otherMotorVa ?? 0;
  const leftOut = [home.heatingCooling.heatPumpVa ?? 0, ...shares.map((share) => share.motorVa)];
  const all = [other, ...leftOut];
  const extraWith = (motorVa: number) =>
    largestMotorExtra(rules.leftOutMotorCounts ? all : [other, motorVa]);
  const ranked = [...shares].sort(
    (a, b) => b.va + extraWith(b.motorVa) - (a.va + extraWith(a.motorVa)),
  );
  const extraVa = extraWith(ranked[0]?.motorVa ?? 0);
  const motor =
    extraVa > 0 ? [countedLine({ code: 'largest-motor' }, extraVa, '220.50, 430.24')] : [];
  return [...oneCountedLines(ranked, '220.60'), ...motor];
}

function cookingLine(home: DwellingLoads, table: readonly CookingDemand[]): LoadLine[] {
  if (home.cooking.length === 0) return [];
  const { va, how } = cookingDemandVa(home.cooking, table);
  return [countedLine({ code: 'cooking', how }, va, 'Table 220.55')];
}

function dryerLine(home: DwellingLoads, rules: ServiceLoadRules): LoadLine[] {
  if (home.dryerVa === null) return [];
  return [countedLine({ code: 'dryer' }, Math.max(home.dryerVa, rules.dryerLeastVa), '220.54')];
}

function chargerLines(home: DwellingLoads, rules: ServiceLoadRules): LoadLine[] {
  const least = rules.evLeastVa ?? 0;
  return home.chargers.map((charger) =>
    countedLine(
      { code: 'load', name: charger.name },
      Math.max(charger.va, least),
      least > 0 ? '220.57' : '220.14(A)',
    ),
  );
}
