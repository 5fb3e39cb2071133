import type { Demand, Load, Season } from '../home/home';
import { demandOf, peakOf } from '../home/loads/demand';
import { operand, timesFigure } from '../quantity/figure-arithmetic';
import type { PowerStep } from '../tables/generic-steps';
import { practice } from '../tables/practice-figures';
import { type BusierLeg, busierLegs } from './busier-leg';
import type { LeftOut, PowerSize } from './route';
import type { SourceName } from './why-left-out';

/** A source is not loaded above this share of its continuous rating. */
export const LOAD_SHARE = practice('source-load-share');
/** A soft starter takes about 40 % off a compressor's start; sellers claim more. */
export const SOFT_START_SHARE = practice('soft-starter-share');

const BEHIND_SOFT_STARTER = operand(SOFT_START_SHARE, 'count', 'soft-starter-share', {
  kind: 'practice',
});

export interface Fitted {
  readonly step: PowerStep;
  readonly carried: readonly Load[];
  readonly leftOut: readonly LeftOut[];
  readonly demand: Demand;
  readonly softStarter: boolean;
}

type Power = Pick<Demand, 'runningWatts' | 'startVa'>;

export interface FitWish {
  readonly loads: readonly Load[];
  readonly seasons: readonly Season[];
  /** Sizes to choose from, smallest first; already at what they give on this site. */
  readonly steps: readonly PowerStep[];
  /** An inverter trips on the high end of a start; a generator rides through the likely one. */
  readonly startEnd: 'value' | 'high';
  readonly maySoftStart: boolean;
  readonly source: SourceName;
}

/**
 * The smallest source that runs and starts these loads. Where none does, a soft starter is tried on the
 * compressor, then the hardest-starting or largest load is left out, one after the other. Null: not even one.
 */
export function fitPower(wish: FitWish): Fitted | null {
  let carried = [...wish.loads];
  let softStarter = false;
  const leftOut: LeftOut[] = [];
  const halves = wish.steps.some((step) => step.volts === 240);
  while (carried.length > 0 && wish.steps.length > 0) {
    const loads = softStarter ? carried.map(softened) : carried;
    const demand = peakOf(loads, wish.seasons);
    const strong = wish.steps.filter((s) => holds(s, demand, wish.startEnd));
    const legs =
      halves && strong.length > 0
        ? busierLegs(loads, { seasons: wish.seasons, end: wish.startEnd })
        : [];
    const step = strong.find((s) => legHolds(s, legs));
    if (step !== undefined) {
      return { step, carried: loads, leftOut, demand: demandOf(loads, wish.seasons), softStarter };
    }
    const largest = wish.steps.at(-1)!;
    const byLeg = holds(largest, demand, wish.startEnd);
    if (wish.maySoftStart && !softStarter && !byLeg && carried.some(isCompressor)) {
      softStarter = true;
      continue;
    }
    const worst = byLeg
      ? worstOf(
          carried.filter((load) => load.volts === 120),
          legs.some((leg) => leg.watts <= largest.watts / 2) ? startStep : runningWatts,
        )
      : worstOf(carried, asksOf(demand, largest));
    carried = carried.filter((load) => load !== worst);
    leftOut.push(byLeg ? tooMuchForHalf(worst, largest) : tooHard(worst, wish.source));
  }
  return null;
}

/** What the source gives and what is asked of it; its rating is that of its label where one was read. */
export function powerOf({ step, demand }: Fitted, continuousWatts = step.watts): PowerSize {
  return {
    continuousWatts,
    startVa: step.startVa,
    runningWatts: demand.runningWatts,
    startDemandVa: demand.startVa,
  };
}

function holds(step: PowerStep, demand: Power, end: 'value' | 'high'): boolean {
  const runs = demand.runningWatts.value <= LOAD_SHARE * step.watts;
  return runs && demand.startVa[end] <= step.startVa;
}

/** Each half of a 120/240 V set carries half its power and lends half its start, however strong the whole is. */
function legHolds(step: PowerStep, ways: readonly BusierLeg[]): boolean {
  if (step.volts !== 240) return true;
  const starts = (leg: BusierLeg) => !step.startsByHalf || leg.startVa <= step.startVa / 2;
  return ways.some((leg) => leg.watts <= step.watts / 2 && starts(leg));
}

function isCompressor(load: Load): boolean {
  return ['heat-pump', 'central-ac', 'second-ac'].includes(load.id);
}

/** A compressor behind a soft starter; any other load as it is. */
export function softened(load: Load): Load {
  if (!isCompressor(load) || load.startVa === null) return load;
  return { ...load, startVa: timesFigure(load.startVa, BEHIND_SOFT_STARTER) };
}

const runningWatts = (load: Load) => load.runningWatts.value;
const startStep = (load: Load) => (load.startVa?.high ?? 0) - load.runningVa.value;

/** What a load asks of a source that is too weak: its start where that is the point, else its running power. */
function asksOf(demand: Power, largest: PowerStep): (load: Load) => number {
  const startIsThePoint = demand.runningWatts.value <= LOAD_SHARE * largest.watts;
  return startIsThePoint ? startStep : runningWatts;
}

/** Drop a load that is not life support: of the lowest rank first, then the one that asks most. */
function worstOf(loads: readonly Load[], asks: (load: Load) => number): Load {
  const order = { wait: 0, good: 1, must: 2 };
  const spare = loads.filter((load) => !load.life);
  const pool = spare.length > 0 ? spare : loads;
  return [...pool].sort((a, b) => order[a.rank] - order[b.rank] || asks(b) - asks(a))[0]!;
}

function tooMuchForHalf(load: Load, { watts, startVa }: PowerStep): LeftOut {
  return {
    load: load.id,
    must: load.rank === 'must',
    why: { code: 'half-too-small', halfWatts: watts / 2, halfStartVa: startVa / 2 },
  };
}

function tooHard(load: Load, source: SourceName): LeftOut {
  return {
    load: load.id,
    must: load.rank === 'must',
    why: { code: 'too-hard', source, startVa: load.startVa?.high ?? null },
  };
}
