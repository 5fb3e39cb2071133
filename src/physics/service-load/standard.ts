import { cookingDemandVa } from './cooking-demand';
import { type CookingDemand, type DwellingLoads, type ServiceLoadRules, sumVa } from './dwelling';
import { generalLines, lightingDemandLines } from './general-load';
import { largerWholeLines } from './heating-or-cooling';
import { countedLine, type LoadLine, type ServiceLoad, serviceLoad, shownLine } from './load-lines';

/**
 * Dwelling load by the standard method, NEC Article 220 Part III, line by line, VA and A.
 * `largestMotorVa` is the running VA of the largest motor that is not already counted as cooling: 25 % of it is added
 * (220.50, 430.24). A planning figure: the edition in force, local changes and a licensed electrician decide.
 */
export function standardServiceLoad(
  home: DwellingLoads & { readonly largestMotorVa?: number },
  rules: ServiceLoadRules,
  cookingTable: readonly CookingDemand[],
): ServiceLoad {
  const general = generalLines(home, rules);
  const generalVa = general.reduce((sum, line) => sum + line.va, 0);
  const motorVa = 0.25 * (home.largestMotorVa ?? 0);
  const lines = [
    ...general.map((line) => ({ ...line, counted: false })),
    shownLine('Sum of these', generalVa, rules.demandSection),
    ...lightingDemandLines(generalVa, rules),
    ...cookingLine(home, cookingTable),
    ...dryerLine(home, rules),
    ...applianceLines(home, rules),
    ...chargerLines(home, rules),
    ...largerWholeLines(home.heatingCooling, '220.60'),
    ...(motorVa > 0 ? [countedLine('25 % of the largest motor', motorVa, '220.50, 430.24')] : []),
  ];
  return serviceLoad(lines, home.volts);
}

function cookingLine(home: DwellingLoads, table: readonly CookingDemand[]): LoadLine[] {
  if (home.cooking.length === 0) return [];
  const { va, how } = cookingDemandVa(home.cooking, table);
  return [countedLine(`Cooking (${how})`, va, 'Table 220.55')];
}

function dryerLine(home: DwellingLoads, rules: ServiceLoadRules): LoadLine[] {
  if (home.dryerVa === null) return [];
  return [countedLine('Electric dryer', Math.max(home.dryerVa, rules.dryerLeastVa), '220.54')];
}

function applianceLines(home: DwellingLoads, rules: ServiceLoadRules): LoadLine[] {
  if (home.appliances.length === 0) return [];
  const whole = sumVa(home.appliances);
  const many = home.appliances.length >= rules.manyAppliancesFrom;
  const share = many ? rules.manyAppliancesShare : 1;
  const names = home.appliances.map((a) => a.name).join(', ');
  const label = `Fixed appliances at ${share * 100} %: ${names}`;
  return [countedLine(label, whole * share, '220.53')];
}

function chargerLines(home: DwellingLoads, rules: ServiceLoadRules): LoadLine[] {
  const least = rules.evLeastVa ?? 0;
  return home.chargers.map((charger) =>
    countedLine(charger.name, Math.max(charger.va, least), least > 0 ? '220.57' : '220.14(A)'),
  );
}
