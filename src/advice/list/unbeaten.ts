import { isHealthDevice } from '../../home/people/health-devices';
import type { SizeOdds } from '../ride/size-odds';
import type { Candidate } from './candidate';
import { isEnough } from './enough';
import type { Living } from './living';
import { tieBreak } from './tie-break';
import { boundOf, compareValues, NO_VALUE, type Value, type Weighing, worthOf } from './value';

/** A candidate with what it is worth. */
export interface Weighed extends Candidate {
  readonly value: Value;
}

/** What the sizes of one way of living are weighed by. */
export interface Count {
  readonly by: Weighing;
  readonly odds: SizeOdds;
}

/** Counts what candidates are worth, each once, and which of them nothing beats. */
export class Scale {
  /** @param values what was counted already, on a scale of the same counts */
  constructor(
    readonly countOf: (living: Living) => Count,
    private readonly values = new Map<Candidate, Value>(),
  ) {}

  /** The most it can come to, before anything is counted. */
  bound(candidate: Candidate): Value {
    return this.values.get(candidate) ?? boundOf(candidate, this.countOf(candidate.living).by);
  }

  weigh(candidate: Candidate): Weighed {
    const { by, odds } = this.countOf(candidate.living);
    const value = this.values.get(candidate) ?? worthOf(candidate, by, odds);
    this.values.set(candidate, value);
    return { ...candidate, value };
  }

  /** Share of the goal's hours, %, for which it carries the devices alone, careful; null where there are none. */
  deviceShare({ living, counted }: Candidate): number | null {
    const devices = living.home.loads.filter(isHealthDevice);
    if (devices.length === 0) return null;
    const loads = devices.filter(({ id }) => counted.carries.includes(id));
    const feeding = { route: counted, loads, careful: true };
    const meanShare = this.countOf(living).odds.meanShare(feeding);
    return Math.round((100 * meanShare * loads.length) / devices.length);
  }

  /**
   * Those that nothing else beats, cheapest first. Something that costs as much or less and is worth as much or more beats a
   * candidate, unless it asks to live thriftily where the candidate is enough as usual: that much is worth paying for.
   * A candidate that is beaten whatever its odds is never counted.
   */
  unbeaten(candidates: readonly Candidate[]): Weighed[] {
    const order = [...candidates].sort(
      (a, b) =>
        a.usd - b.usd ||
        Number(isThrifty(a)) - Number(isThrifty(b)) ||
        tieBreak(a.sized.route, b.sized.route),
    );
    let kept: Weighed[] = [];
    for (const candidate of order) {
      const best = bestOf(kept);
      const bestAsUsual = isThrifty(candidate) ? best : bestOf(kept.filter((k) => !isThrifty(k)));
      if (compareValues(this.bound(candidate), bestAsUsual) <= 0) continue;
      const weighed = this.weigh(candidate);
      if (compareValues(weighed.value, bestAsUsual) <= 0) continue;
      if (compareValues(weighed.value, best) <= 0 && !isEnough(weighed)) continue;
      kept = kept.filter((one) => one.usd < weighed.usd || !beats(weighed, one));
      kept.push(weighed);
    }
    return kept;
  }
}

/** Costs no more, is worth no less, and asks for no more comfort than the other, or the other is not enough anyway. */
function beats(a: Weighed, b: Weighed): boolean {
  return (
    a.usd <= b.usd &&
    compareValues(a.value, b.value) >= 0 &&
    (!isThrifty(a) || isThrifty(b) || !isEnough(b))
  );
}

const isThrifty = ({ living }: Candidate) => living.way === 'thrifty';

const bestOf = (kept: readonly Weighed[]): Value =>
  kept.reduce((best, { value }) => (compareValues(value, best) > 0 ? value : best), NO_VALUE);
