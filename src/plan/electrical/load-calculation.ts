import type { Home } from '../../home/home';
import type { ServiceLoadRules } from '../../physics/service-load/dwelling';
import type { ServiceLoad } from '../../physics/service-load/load-lines';
import { dwellingNeutralLoad } from '../../physics/service-load/neutral-load';
import { existingServiceLoad } from '../../physics/service-load/optional-existing';
import { optionalNewServiceLoad } from '../../physics/service-load/optional-new';
import { serviceVerdict } from '../../physics/service-load/service-verdict';
import { standardServiceLoad } from '../../physics/service-load/standard';
import { cookingDemand } from '../../tables/cooking-demand';
import { LEAST_HOUSE_AMPS } from '../../tables/least-service';
import { type CodeEdition, serviceLoadRulesOf } from '../../tables/service-load-rules';
import { dwellingAssumptions, dwellingLoads, type End, otherMotorVa } from './dwelling-loads';
import { lineVolts, mainAmps } from './service-facts';

export interface LoadSum {
  readonly method: 'optional, existing dwelling' | 'optional, new dwelling' | 'standard';
  readonly lines: readonly {
    label: string;
    va: number;
    amps: number;
    section: string;
    counted: boolean;
  }[];
  readonly totalVa: number;
  readonly amps: number;
  /** The same with every range at its high end and car charging at 125 %. */
  readonly carefulAmps: number;
  readonly notes: readonly string[];
}

export interface EditionLoad {
  readonly edition: CodeEdition;
  /** Empty where we do not hold the numbers of this edition. */
  readonly sums: readonly LoadSum[];
  /** Load of the service neutral, NEC 220.61, A; null where no sum is given. */
  readonly neutralAmps: number | null;
  readonly note: string;
}

export type LoadVerdict = 'passes' | 'marginal' | 'over' | 'not-judged';

export interface LoadCalculation {
  readonly verdict: LoadVerdict;
  readonly says: string;
  readonly editions: readonly EditionLoad[];
  readonly assumptions: readonly string[];
}

const editions: readonly CodeEdition[] = [2017, 2020, 2023, 2026];
/** The optional method needs a service of this rating or more, NEC 220.82(A). */
const OPTIONAL_LEAST_AMPS = 100;

/**
 * Dwelling load of this home line by line, VA and A, by NEC Article 220 of each edition. A planning figure:
 * it passes only at 80 % of the main or less by every method and every careful end; the rest is the electrician's.
 */
export function loadCalculation(home: Home): LoadCalculation {
  const refused = refusal(home);
  if (refused !== null) {
    return { verdict: 'not-judged', says: refused, editions: [], assumptions: [] };
  }
  const worked = editions.map((edition) => editionLoad(home, edition));
  const assumptions = dwellingAssumptions(home);
  const { verdict, says } = judge(home, worked);
  return { verdict, says: `${says}${leastService(home)}`, editions: worked, assumptions };
}

/** A main under the least of a one-family house may stay as it is, and only as long as it does. */
function leastService(home: Home): string {
  const main = mainAmps(home);
  if (main === null || main >= LEAST_HOUSE_AMPS) return '';
  return ` A new or changed service of a house is rated ${LEAST_HOUSE_AMPS} A or more (230.79(C)).`;
}

/** The largest likely sum of all methods and editions worked out, VA; null without one. */
export function calculatedVa(calculation: LoadCalculation): number | null {
  const sums = calculation.editions.flatMap((one) => one.sums);
  return sums.length === 0 ? null : Math.max(...sums.map((sum) => sum.totalVa));
}

/** The largest load of the service neutral of all editions worked out, A; null without one. */
export function neutralAmpsOf(calculation: LoadCalculation): number | null {
  const amps = calculation.editions.flatMap(({ neutralAmps }) => neutralAmps ?? []);
  return amps.length === 0 ? null : Math.max(...amps);
}

/** Answers the sum hangs on that were assumed: with one of them open it never passes. */
function guessed({ facts }: Home): string[] {
  const needed = [
    ['home-area', 'floor area'],
    ['big-loads', 'big loads'],
    ['heat-main', 'main heat'],
    ['cool-main', 'cooling'],
    ['water-heater', 'water heater'],
    ['cook-main', 'cooking'],
    ['ev-breaker', 'breaker of the car charger'],
    ['supply-volts', 'supply voltage'],
  ] as const;
  return needed.filter(([id]) => facts.open(id)).map(([, name]) => name);
}

function refusal(home: Home): string | null {
  if (home.facts.is('home-kind', 'apartment')) {
    return 'The service belongs to the building: its manager and electrician hold the calculation.';
  }
  if (lineVolts(home) === null) {
    return 'The supply is 120 V only; the methods of Article 220 used here are for 120/240 V and 120/208 V.';
  }
  return null;
}

function editionLoad(home: Home, edition: CodeEdition): EditionLoad {
  const rules = serviceLoadRulesOf(edition);
  if (rules === null) {
    return {
      edition,
      sums: [],
      neutralAmps: null,
      note: 'We do not hold all numbers of this edition, so no sum is given.',
    };
  }
  const main = mainAmps(home);
  const optional = main !== null && main >= OPTIONAL_LEAST_AMPS;
  const sums = [sumBy(home, rules, 'optional, existing dwelling')];
  if (optional) sums.push(sumBy(home, rules, 'optional, new dwelling'));
  else sums.push(sumBy(home, rules, 'standard'));
  const note = optional
    ? '220.83 tells whether the present service is enough; 220.82 is the measure for new work.'
    : `The optional method for new work needs a service known to be ${OPTIONAL_LEAST_AMPS} A or more, so the standard method is shown.`;
  const neutral = dwellingNeutralLoad(
    dwellingLoads(home, lineVolts(home)!, 'value'),
    rules,
    cookingDemand.rows,
  );
  return { edition, sums, neutralAmps: neutral.amps, note };
}

function sumBy(home: Home, rules: ServiceLoadRules, method: LoadSum['method']): LoadSum {
  const volts = lineVolts(home)!;
  const at = (end: End) => loadBy(home, rules, method, end);
  const likely = at('value');
  const chargerVa = dwellingLoads(home, volts, 'high').chargers.reduce((sum, c) => sum + c.va, 0);
  const extraVa = 0.25 * chargerVa;
  return {
    method,
    lines: likely.lines.map((line) => ({ ...line, amps: line.va / volts })),
    totalVa: likely.totalVa,
    amps: likely.amps,
    carefulAmps: (at('high').totalVa + extraVa) / volts,
    notes: likely.notes,
  };
}

function loadBy(
  home: Home,
  rules: ServiceLoadRules,
  method: LoadSum['method'],
  end: End,
): ServiceLoad {
  const loads = dwellingLoads(home, lineVolts(home)!, end);
  if (method === 'standard') {
    const motorVa = otherMotorVa(home, end);
    return standardServiceLoad({ ...loads, otherMotorVa: motorVa }, rules, cookingDemand.rows);
  }
  if (method === 'optional, new dwelling') return optionalNewServiceLoad(loads, rules);
  return existingServiceLoad({ ...loads, addsHeatingOrCooling: false }, rules);
}

function judge(
  home: Home,
  worked: readonly EditionLoad[],
): Pick<LoadCalculation, 'verdict' | 'says'> {
  const sums = worked.flatMap((one) => one.sums);
  const plainAmps = Math.max(...sums.map((sum) => sum.amps));
  const carefulAmps = Math.max(...sums.map((sum) => sum.carefulAmps));
  const found = `The loads named come to ${Math.round(plainAmps)} A, ${Math.round(carefulAmps)} A by the careful count`;
  const ratingAmps = mainAmps(home);
  if (ratingAmps === null) {
    return {
      verdict: 'not-judged',
      says: `${found}. The main breaker was not read, so nothing is judged. An electrician reads it first.`,
    };
  }
  const verdict = serviceVerdict({ plainAmps, carefulAmps, ratingAmps });
  const on = `${found}, on a ${ratingAmps} A main`;
  if (verdict === 'within' && guessed(home).length > 0) {
    return {
      verdict: 'marginal',
      says: `${on}, but these answers are assumed: ${guessed(home).join(', ')}. Electrician and inspector decide.`,
    };
  }
  if (verdict === 'within') {
    return {
      verdict: 'passes',
      says: `${on}: 80 % of it or less both ways, as a planning figure. The electrician's own calculation decides.`,
    };
  }
  const over = verdict === 'over' ? 'more than the main, as a planning figure' : 'marginal';
  return {
    verdict: verdict === 'over' ? 'over' : 'marginal',
    says: `${on}: ${over}. Electrician and inspector decide.`,
  };
}
