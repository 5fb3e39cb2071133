import type { ChoiceId } from '#compiled/question-ids.js';
import type { Home, Way } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import { onceStored } from '../../routes/fuel/once-stored';
import { type MustCarried, mustCarried, mustMissed } from '../../routes/must-carried';
import type { Route } from '../../routes/route';
import { reachesGoal } from './enough';
import type { Weighed } from './unbeaten';
import type { Value } from './value';

/** One line of what each dollar buys: a whole route at a size, and what it brings. */
export interface Line {
  /** Null: nothing is bought. */
  readonly route: Route | null;
  /** A source of theirs is there, which may run something of it with nothing bought. */
  readonly ownThere: boolean;
  readonly way: Way;
  /** The likely price, with what the way of living costs, $. */
  readonly usd: number;
  /** Gallons counted: what is kept with what the cans in its parts hold; null without fuel in cans. */
  readonly storedGal: number | null;
  /** How long it lasts on a hard day with that fuel, h; null: no end is foreseen, or nothing is bought. */
  readonly hours: { readonly likely: number; readonly careful: number } | null;
  /** Of what must run. */
  readonly carried: MustCarried;
  /** What must run and it does not carry. */
  readonly missed: readonly LoadId[];
  readonly value: Value;
  /** Carries all that must run through at least 9 of 10 outages of the goal's length. */
  readonly reaches: boolean;
  readonly withinBudget: boolean;
}

export function lineOf(one: Weighed, withinBudget: boolean): Line {
  const { living, usd, value, sized } = one;
  const route = sized.whole();
  const stored = onceStored(living.home, route);
  const { hours } = (stored?.route ?? route).lasting;
  return {
    route,
    ownThere: ownThere(living.home),
    way: living.way,
    usd,
    storedGal: stored?.gallons ?? gallonsToday(route),
    hours: hours === null ? null : { likely: hours.value, careful: hours.low },
    carried: mustCarried(living.home, route),
    missed: mustMissed(living.home, route).map(({ id }) => id),
    value,
    reaches: reachesGoal(one),
    withinBudget,
  };
}

function gallonsToday({ fuel }: Route): number | null {
  return fuel === null || fuel.atHand === null || fuel.fuel === 'propane'
    ? null
    : fuel.atHand.value;
}

const sources: readonly ChoiceId<'own-sources'>[] = [
  ...(['engine-portable', 'engine-standby', 'power-pack', 'home-battery'] as const),
  ...(['ev-outlet', 'hybrid-outlet', 'small-ups'] as const),
];

export const ownThere = ({ facts }: Home): boolean => facts.has('own-sources', ...sources);
