import { answerFigure, type Widths } from '../home/answer-figure';
import type { Home } from '../home/home';
import { generatorFuelDays } from '../outage/generator-fuel-days';
import { generatorOutputKw, SMALL_GENERATOR_DERATE } from '../physics/generator-derate';
import { type FuelLine, fuelLine } from '../physics/generator-fuel';
import { atEnd, otherEnd } from '../quantity/at-end';
import { type Figure, figure } from '../quantity/figure';
import { addFigures, formula, HOURS_IN_DAY, worked } from '../quantity/figure-arithmetic';
import { onceMade } from '../quantity/once-made';
import {
  fuelHeatKwh,
  type GeneratorFuel,
  type GeneratorType,
  generatorType,
} from '../tables/fuels';
import type { PowerStep } from '../tables/generic-steps';
import { practiceRange } from '../tables/practice-figures';
import { keptIn } from './fuel/fuel-containers';
import { burnedIn, fuelSteps } from './fuel/fuel-steps';
import type { PropaneUse } from './note';
import type { FuelUse } from './route';

/** What each size of generator still gives at the height and heat of this site, and on its fuel. */
export function atSite(home: Home, steps: readonly PowerStep[], onFuel = 1): PowerStep[] {
  const share = siteShare(home) * onFuel;
  return steps.map((s) => ({ ...s, watts: s.watts * share, startVa: s.startVa * share }));
}

/** Share of its rating a generator gives here: height above the sea, and the hottest hours. */
export function siteShare(home: Home): number {
  return generatorOutputKw({
    ratedKw: 1,
    altitudeFt: home.site.elevationFt.value,
    airC: (home.site.hotF - 32) / 1.8,
    ...SMALL_GENERATOR_DERATE,
  });
}

export interface FuelWish {
  readonly generator: GeneratorType;
  readonly fuel: GeneratorFuel;
  /** Rating on its label, kW: the idle burn goes by it. */
  readonly ratedKw: number;
  /** What it still gives at this height and heat, kW. */
  readonly siteKw: number;
  /** Average draw by hour of day, W. */
  readonly wattsByHour: readonly number[];
  /** The high end of every use over the likely one; 1 when left out. */
  readonly hungry?: number;
  /** 1 where it runs, by hour; all day when left out. */
  readonly runsByHour?: readonly number[];
  /** Fuel at hand; null when piped. */
  readonly atHand: Figure | null;
  /** What else burns from the same tank, a day; missing where nothing does. */
  readonly besidePerDay?: Figure;
  readonly besideFor?: readonly PropaneUse[];
}

/** Fuel a day, likely with its range from a thrifty generator to a thirsty one at hungry use, the idle burn in it. */
export function fuelUse(wish: FuelWish): FuelUse {
  const type = generatorType(wish.generator);
  const heat = fuelHeatKwh(wish.fuel);
  const mostWatts = 1000 * wish.siteKw;
  const lineOf = (fullLoadEfficiency: number, noLoadRatio: number) =>
    fuelLine({
      ratedKw: wish.ratedKw,
      fullLoadEfficiency,
      noLoadRatio,
      kwhPerUnit: heat.lowerKwh,
    });
  const days = (line: FuelLine, use = 1) =>
    generatorFuelDays({
      loadWattsByHour: wish.wattsByHour.map((watts) =>
        Math.max(watts, Math.min(watts * use, mostWatts)),
      ),
      ratedKw: wish.siteKw,
      fuelLine: line,
      usableFuel: null,
      runsByHour: wish.runsByHour,
    });
  const perDay = (efficiency: number, noLoadRatio: number, use = 1) =>
    days(lineOf(efficiency, noLoadRatio), use).fuelPerDay;
  const operands = onceMade(() => burnedIn(wish.ratedKw, heat.unit, heat.lowerKwh));
  const steps = (efficiency: number, noLoadRatio: number, use = 1) =>
    fuelSteps({ efficiency, noLoadRatio }, operands(), days(lineOf(efficiency, noLoadRatio), use));
  const burns = figure({
    value: perDay(type.efficiency, type.noLoadRatio),
    low: perDay(type.efficiencyHigh, type.noLoadRatioLow),
    high: perDay(type.efficiencyLow, type.noLoadRatioHigh, wish.hungry),
    unit: `${heat.unit}/day`,
    is: 'fuel-burned',
    as: () => steps(type.efficiency, type.noLoadRatio),
    endAs: (end) =>
      end === 'low'
        ? steps(type.efficiencyHigh, type.noLoadRatioLow)
        : steps(type.efficiencyLow, type.noLoadRatioHigh, wish.hungry),
    source: formula(
      'fuel-line',
      [],
      [{ of: 'heat-content', ref: 'AFDC' }, 'efficiency-common-practice'],
    ),
  });
  const { atHand, besidePerDay, besideFor } = wish;
  const shared = atHand !== null && besidePerDay !== undefined && besidePerDay.high > 0;
  return {
    fuel: wish.fuel,
    unit: heat.unit,
    atHand: shared ? shareOfTank(atHand, burns, besidePerDay) : atHand,
    ...(shared && { tank: atHand, besidePerDay, besideFor }),
    perDay: burns,
  };
}

/**
 * What the generator gets of a tank before it is empty: contents x its burn / all that burns from it. The ends go with the
 * burn that they meet, for hours are counted from both: least in the tank and most burned. A thirsty generator gets the
 * larger share of a tank, so an end may come to the wrong side of the likely value; it is moved to it, the careful way for the low end.
 */
function shareOfTank(tank: Figure, generator: Figure, beside: Figure): Figure {
  const share = (gallons: number, own: number, other: number) =>
    own + other > 0 ? (gallons * own) / (own + other) : gallons;
  const value = share(tank.value, generator.value, beside.value);
  return figure({
    value,
    low: Math.min(value, share(tank.low, generator.high, beside.high)),
    high: Math.max(value, share(tank.high, generator.low, beside.low)),
    unit: tank.unit,
    is: 'fuel-at-hand',
    as: () => ofTank(tank, generator, beside),
    endAs: (end) => {
      const burned = otherEnd[end];
      return ofTank(atEnd(tank, end), atEnd(generator, burned), atEnd(beside, burned));
    },
    source: formula('share-of-tank', [tank, generator, beside]),
  });
}

function ofTank(tank: Figure, own: Figure, other: Figure): Figure {
  const { unit } = own;
  const all = addFigures([own, other], { unit, is: 'all-from-tank' });
  return worked({ by: 'ratio', of: [tank, own], under: [all] }, { unit: tank.unit });
}

/** Hours the fuel at hand lasts; null when it is piped or nothing burns. */
export function fuelHours(fuel: FuelUse): Figure | null {
  if (fuel.atHand === null || fuel.perDay.low <= 0) return null;
  return worked(
    { by: 'ratio', of: [HOURS_IN_DAY, fuel.atHand], under: [fuel.perDay] },
    {
      unit: 'h',
      is: 'hours-on-fuel',
      source: formula('fuel-over-burn', [fuel.atHand, fuel.perDay]),
    },
  );
}

/** Where none is kept now: two cans of 5 gal, as much as many places allow. */
function wouldKeep(): Figure {
  const source = {
    kind: 'assumed',
    is: 'cans-to-fill',
  } as const;
  const { low, likely: value, high } = practiceRange('cans-kept');
  return figure({ value, low, high, unit: 'gal', is: 'fuel-at-hand', source });
}

/** What a portable generator would burn here: propane where there is a tank and no gasoline is wanted. */
export function portableFuel({ facts }: Home): GeneratorFuel {
  const none = facts.told('gasoline-gallons') && facts.number('gasoline-gallons') === 0;
  return none && facts.is('gas-supply', 'propane-tank') ? 'propane' : 'gasoline';
}

/** Contents told are contents. A float gauge is rough to a tenth, and a tank run dry needs a leak test. */
export const PROPANE_USABLE = practiceRange('propane-usable-share');

/** Fuel at hand for a generator: gasoline or diesel kept, or the propane told to be in the tank; piped gas has no end. */
export function fuelAtHand(home: Home, widths: Widths, fuel: GeneratorFuel): Figure | null {
  if (fuel === 'natural-gas') return null;
  const { facts } = home;
  if (fuel !== 'propane') {
    const kept = answerFigure(facts, widths, keptIn(fuel), { unit: 'gal' });
    return kept !== null && kept.value > 0 ? kept : wouldKeep();
  }
  const tank = answerFigure(facts, widths, 'propane-gallons', { unit: 'gal' });
  if (tank === null) {
    return figure({
      value: 0,
      unit: 'gal',
      is: 'fuel-at-hand',
      source: { kind: 'assumed', is: 'no-tank' },
    });
  }
  return figure({
    value: tank.value * PROPANE_USABLE.likely,
    low: tank.low * PROPANE_USABLE.low,
    high: tank.high * PROPANE_USABLE.high,
    unit: 'gal',
    is: 'fuel-at-hand',
    source: formula('usable-of-tank', [tank], ['common-practice-no-source']),
  });
}
