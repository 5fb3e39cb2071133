import { cookingDemandVa } from './cooking-demand';
import type { CookingDemand, DwellingLoads, ServiceLoadRules } from './dwelling';
import { generalLines, lightingDemandLines } from './general-load';
import type { LineName } from './line-is';
import { countedLine, type ServiceLoad, serviceLoad } from './load-lines';

/**
 * Load of the service neutral, NEC 220.61: the general load after its demand, cooking and dryer at 70 %, and what else
 * runs at 120 V. A = VA / line-to-line volts. The motors' extra 25 % is left to the electrician.
 */
export function neutralLoad(given: {
  generalDemandVa: number;
  cookingDemandVa: number;
  dryerVa: number;
  other120V: readonly { readonly name: LineName; readonly va: number }[];
  share: number;
  volts: number;
}): ServiceLoad {
  const { share } = given;
  const lines = [
    countedLine({ code: 'general-after-demand' }, given.generalDemandVa, '220.61'),
    countedLine({ code: 'cooking-share', share }, given.cookingDemandVa * share, '220.61(B)'),
    countedLine({ code: 'dryer-share', share }, given.dryerVa * share, '220.61(B)'),
    ...given.other120V.map((load) =>
      countedLine({ code: 'load', name: load.name }, load.va, '220.61(A)'),
    ),
  ];
  return serviceLoad(
    lines.filter((line) => line.va > 0),
    given.volts,
  );
}

/** The same of a dwelling, by the numbers of a code edition. */
export function dwellingNeutralLoad(
  home: DwellingLoads,
  rules: ServiceLoadRules,
  cookingTable: readonly CookingDemand[],
): ServiceLoad {
  const sum = (lines: readonly { va: number }[]) => lines.reduce((all, { va }) => all + va, 0);
  return neutralLoad({
    generalDemandVa: sum(lightingDemandLines(sum(generalLines(home, rules)), rules)),
    cookingDemandVa: home.cooking.length === 0 ? 0 : cookingDemandVa(home.cooking, cookingTable).va,
    dryerVa: home.dryerVa === null ? 0 : Math.max(home.dryerVa, rules.dryerLeastVa),
    other120V: home.appliances.filter(({ onNeutral }) => onNeutral === true),
    share: rules.neutralShare,
    volts: home.volts,
  });
}
