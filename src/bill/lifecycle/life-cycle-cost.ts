import { escalatedPresentValue, singlePresentValue, uniformPresentValue } from './factors';

export interface LifeCycleInput {
  /** Study period, whole years, and real discount rate as a fraction. */
  readonly years: number;
  readonly rate: number;
  /** Purchase, installation, permit, less incentives, today, $. */
  readonly investment: number;
  /** Bought again at the end of `year`; one due at the end of the study is not bought. */
  readonly replacements?: readonly { readonly year: number; readonly cost: number }[];
  /** Worth left at the end of the study, $. */
  readonly residual?: number;
  /** Energy a year at today's prices, $, and its yearly rise above inflation; or a published factor instead. */
  readonly energyPerYear: number;
  readonly energyEscalation?: number;
  readonly energyFactor?: number;
  /** Operating, maintenance and repair a year, $. */
  readonly upkeepPerYear: number;
}

export interface LifeCycleCost {
  /** Present values, $. */
  readonly total: number;
  readonly investment: number;
  readonly replacements: number;
  readonly residual: number;
  readonly energy: number;
  readonly upkeep: number;
}

/**
 * Life-cycle cost: investment + PV(replacements) - PV(residual) + PV(energy) + PV(operating, maintenance, repair).
 * Year-end convention, base date year 0. NIST Handbook 135 (1995), LCC formula for building projects; ASTM E917.
 */
export function lifeCycleCost(input: LifeCycleInput): LifeCycleCost {
  const { years, rate } = input;
  const replacements = (input.replacements ?? [])
    .filter((r) => r.year < years)
    .reduce((sum, r) => sum + r.cost * singlePresentValue({ rate, years: r.year }), 0);
  const residual = (input.residual ?? 0) * singlePresentValue({ rate, years });
  const escalation = input.energyEscalation ?? 0;
  const factor = input.energyFactor ?? escalatedPresentValue({ rate, escalation, years });
  const energy = input.energyPerYear * factor;
  const upkeep = input.upkeepPerYear * uniformPresentValue({ rate, years });
  const { investment } = input;
  const total = investment + replacements - residual + energy + upkeep;
  return { total, investment, replacements, residual, energy, upkeep };
}

export interface SavingsMeasures {
  /** Net savings, $ of today. ASTM E1074. */
  readonly netSavings: number;
  /** Savings-to-investment ratio; null when nothing extra is invested. ASTM E964. */
  readonly ratio: number | null;
  /** Adjusted internal rate of return, a year; null with the ratio, or when the ratio is not above zero. ASTM E1057. */
  readonly adjustedReturn: number | null;
}

/**
 * An alternative against doing nothing: NS = LCC(base) - LCC(alternative); SIR = PV operating savings / PV extra
 * investment, replacements and residual counted to the investment; AIRR = (1 + r) SIR^(1/N) - 1.
 */
export function savingsMeasures(
  base: LifeCycleCost,
  alternative: LifeCycleCost,
  { years, rate }: { years: number; rate: number },
): SavingsMeasures {
  const saved = base.energy + base.upkeep - alternative.energy - alternative.upkeep;
  const outlay = (c: LifeCycleCost) => c.investment + c.replacements - c.residual;
  const extra = outlay(alternative) - outlay(base);
  const ratio = extra > 0 ? saved / extra : null;
  const adjustedReturn = ratio !== null && ratio > 0 ? (1 + rate) * ratio ** (1 / years) - 1 : null;
  return { netSavings: base.total - alternative.total, ratio, adjustedReturn };
}

/** Years at which something with a life of `lifeYears` is bought again within a study; none at its end. */
export function replacementYears(given: { lifeYears: number; years: number }): number[] {
  if (!(given.lifeYears > 0)) throw new RangeError(`a life of ${given.lifeYears} years`);
  const out: number[] = [];
  for (let k = 1; k * given.lifeYears < given.years - 1e-9; k++)
    out.push(Math.ceil(k * given.lifeYears - 1e-9));
  return out.filter((year) => year < given.years);
}

/** Straight-line share of the cost that is left at the end of the study, $. */
export function straightLineResidual(given: {
  cost: number;
  lifeYears: number;
  years: number;
}): number {
  const used = given.years % given.lifeYears;
  return used === 0 ? 0 : given.cost * (1 - used / given.lifeYears);
}
