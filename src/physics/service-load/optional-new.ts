import type { DwellingLoads, ServiceLoadRules } from './dwelling';
import { generalLines, twoStepLines } from './general-load';
import { largestShareLines } from './heating-or-cooling';
import { countedLine, type LoadLine, type ServiceLoad, serviceLoad, shownLine } from './load-lines';

/**
 * Dwelling load by the optional method, NEC 220.82: general load and nameplates, the first 10 kVA whole and the rest at
 * 40 %, plus the largest share of heating or cooling. Only for one 3-wire service or feeder of 100 A or more.
 */
export function optionalNewServiceLoad(home: DwellingLoads, rules: ServiceLoadRules): ServiceLoad {
  const { optionalSection: section } = rules;
  const items = optionalGeneralLines(home, rules);
  const generalVa = items.reduce((sum, line) => sum + line.va, 0);
  const lines = [
    ...items.map((line) => ({ ...line, counted: false })),
    shownLine({ code: 'general-load' }, generalVa, `${section}(B)`),
    ...twoStepLines(generalVa, rules.optionalFirstVa, rules.restShare, `${section}(B)`),
    ...largestShareLines(home.heatingCooling, `${section}(C)`),
  ];
  return serviceLoad(lines, home.volts, ['service-100-or-more']);
}

/** General load of the optional methods: every appliance, range, dryer and charger at its nameplate. VA. */
export function optionalGeneralLines(home: DwellingLoads, rules: ServiceLoadRules): LoadLine[] {
  const section = `${rules.optionalSection}(B)`;
  const named = [...home.cooking, ...home.appliances, ...home.chargers];
  const dryer =
    home.dryerVa === null ? [] : [countedLine({ code: 'dryer' }, home.dryerVa, section)];
  return [
    ...generalLines(home, rules),
    ...named.map((load) => countedLine({ code: 'load', name: load.name }, load.va, section)),
    ...dryer,
  ];
}
