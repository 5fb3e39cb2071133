import type { Home } from '../../home/home';
import type { ServiceLoadRules } from '../../physics/service-load/dwelling';
import type { LineIs } from '../../physics/service-load/line-is';
import type { LoadNote, ServiceLoad } from '../../physics/service-load/load-lines';
import { dwellingNeutralLoad } from '../../physics/service-load/neutral-load';
import { existingServiceLoad } from '../../physics/service-load/optional-existing';
import { optionalNewServiceLoad } from '../../physics/service-load/optional-new';
import { serviceVerdict } from '../../physics/service-load/service-verdict';
import { standardServiceLoad } from '../../physics/service-load/standard';
import { cookingDemand } from '../../tables/electrical/cooking-demand';
import { LEAST_HOUSE_AMPS } from '../../tables/electrical/least-service';
import { type CodeEdition, serviceLoadRulesOf } from '../../tables/electrical/service-load-rules';
import {
  type DwellingAssumption,
  dwellingAssumptions,
  dwellingLoads,
  type End,
  otherMotorVa,
} from './dwelling-loads';
import { lineVolts, mainAmps } from './service-facts';

/** 220.83, 220.82 and the standard method of Article 220. */
export type LoadMethod = 'optional-existing' | 'optional-new' | 'standard';

export interface LoadSum {
  readonly method: LoadMethod;
  readonly lines: readonly {
    is: LineIs;
    va: number;
    amps: number;
    section: string;
    counted: boolean;
  }[];
  readonly totalVa: number;
  readonly amps: number;
  /** The same with every range at its high end and car charging at 125 %. */
  readonly carefulAmps: number;
  readonly notes: readonly LoadNote[];
}

export interface EditionLoad {
  readonly edition: CodeEdition;
  /** Empty where we do not hold the numbers of this edition. */
  readonly sums: readonly LoadSum[];
  /** Load of the service neutral, NEC 220.61, A; null where no sum is given. */
  readonly neutralAmps: number | null;
  readonly note: EditionNote;
}

/** Which methods are shown, and why. */
export type EditionNote =
  | { readonly code: 'numbers-not-held' | 'existing-and-new' }
  /** The optional method for new work needs a service of so much, A. */
  | { readonly code: 'standard-shown'; readonly leastAmps: number };

export type LoadVerdict = 'passes' | 'marginal' | 'over' | 'not-judged';

/** An answer that the sum hangs on. */
export type NeededAnswer =
  | 'home-area'
  | 'big-loads'
  | 'heat-main'
  | 'cool-main'
  | 'water-heater'
  | 'cook-main'
  | 'ev-breaker'
  | 'supply-volts';

/** The largest sums of all methods, A. */
interface LargestAmps {
  readonly amps: number;
  readonly carefulAmps: number;
}

/** What came of it; `words` says it. */
export type LoadFinding =
  | { readonly code: 'of-the-building' | 'supply-120' }
  | ({ readonly code: 'main-not-read' } & LargestAmps)
  | ({ readonly code: 'within' | 'marginal' | 'over'; readonly mainAmps: number } & LargestAmps)
  | ({
      readonly code: 'answers-assumed';
      readonly mainAmps: number;
      readonly assumed: readonly NeededAnswer[];
    } & LargestAmps);

export interface LoadCalculation {
  readonly verdict: LoadVerdict;
  readonly finding: LoadFinding;
  /** Least rating of a new or changed service of a house, A (230.79(C)); null where the main is that or more, or not read. */
  readonly leastHouseAmps: number | null;
  readonly editions: readonly EditionLoad[];
  readonly assumptions: readonly DwellingAssumption[];
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
    return {
      verdict: 'not-judged',
      finding: { code: refused },
      leastHouseAmps: null,
      editions: [],
      assumptions: [],
    };
  }
  const worked = editions.map((edition) => editionLoad(home, edition));
  const finding = judge(home, worked);
  return {
    verdict: verdictOf(finding),
    finding,
    leastHouseAmps: leastService(home),
    editions: worked,
    assumptions: dwellingAssumptions(home),
  };
}

function verdictOf({ code }: LoadFinding): LoadVerdict {
  if (code === 'within') return 'passes';
  if (code === 'over') return 'over';
  return code === 'marginal' || code === 'answers-assumed' ? 'marginal' : 'not-judged';
}

/** A main under the least of a one-family house may stay as it is, and only as long as it does. */
function leastService(home: Home): number | null {
  const main = mainAmps(home);
  return main === null || main >= LEAST_HOUSE_AMPS ? null : LEAST_HOUSE_AMPS;
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
function guessed({ facts }: Home): NeededAnswer[] {
  return needed.filter((id) => facts.open(id));
}

const needed: readonly NeededAnswer[] = [
  'home-area',
  'big-loads',
  'heat-main',
  'cool-main',
  'water-heater',
  'cook-main',
  'ev-breaker',
  'supply-volts',
];

/** The service belongs to the building; the methods used here are for 120/240 V and 120/208 V. */
function refusal(home: Home): 'of-the-building' | 'supply-120' | null {
  if (home.facts.is('home-kind', 'apartment')) return 'of-the-building';
  return lineVolts(home) === null ? 'supply-120' : null;
}

function editionLoad(home: Home, edition: CodeEdition): EditionLoad {
  const rules = serviceLoadRulesOf(edition);
  if (rules === null) {
    return { edition, sums: [], neutralAmps: null, note: { code: 'numbers-not-held' } };
  }
  const main = mainAmps(home);
  const optional = main !== null && main >= OPTIONAL_LEAST_AMPS;
  const sums = [sumBy(home, rules, 'optional-existing')];
  if (optional) sums.push(sumBy(home, rules, 'optional-new'));
  else sums.push(sumBy(home, rules, 'standard'));
  const note: EditionNote = optional
    ? { code: 'existing-and-new' }
    : { code: 'standard-shown', leastAmps: OPTIONAL_LEAST_AMPS };
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
  const extraVa = carefulChargerVa(home);
  return {
    method,
    lines: likely.lines.map((line) => ({ ...line, amps: line.va / volts })),
    totalVa: likely.totalVa,
    amps: likely.amps,
    carefulAmps: (at('high').totalVa + extraVa) / volts,
    notes: likely.notes,
  };
}

/** What the careful count puts on top of a charger that may run for hours: a quarter of it. */
function carefulChargerVa(home: Home): number {
  const { chargers } = dwellingLoads(home, lineVolts(home)!, 'high');
  return 0.25 * chargers.reduce((sum, c) => sum + c.va, 0);
}

/** The lines of a sum at the high end of all that is uncertain, and what the careful count puts on top of them. */
export function carefulSum(
  home: Home,
  edition: CodeEdition,
  method: LoadSum['method'],
): { lines: ServiceLoad['lines']; extraVa: number } | null {
  const rules = serviceLoadRulesOf(edition);
  if (rules === null) return null;
  return { lines: loadBy(home, rules, method, 'high').lines, extraVa: carefulChargerVa(home) };
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
  if (method === 'optional-new') return optionalNewServiceLoad(loads, rules);
  return existingServiceLoad({ ...loads, addsHeatingOrCooling: false }, rules);
}

function judge(home: Home, worked: readonly EditionLoad[]): LoadFinding {
  const sums = worked.flatMap((one) => one.sums);
  const amps = Math.max(...sums.map((sum) => sum.amps));
  const carefulAmps = Math.max(...sums.map((sum) => sum.carefulAmps));
  const main = mainAmps(home);
  if (main === null) return { code: 'main-not-read', amps, carefulAmps };
  const code = serviceVerdict({ plainAmps: amps, carefulAmps, ratingAmps: main });
  const assumed = guessed(home);
  if (code === 'within' && assumed.length > 0)
    return { code: 'answers-assumed', amps, carefulAmps, mainAmps: main, assumed };
  return { code, amps, carefulAmps, mainAmps: main };
}
