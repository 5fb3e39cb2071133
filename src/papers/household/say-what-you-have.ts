import { traitsOf } from '../../kinds/route-traits';
import type { Plan } from '../../plan/plan';
import { formatQuantity } from '../../quantity/format-quantity';
import { mustMissed } from '../../routes/must-carried';
import type { Route } from '../../routes/route';
import type { Words } from '../../words/words';

/** The source that is there, in words. */
const sourceOf = (route: Route) =>
  traitsOf[route.kind].vehicle ? "your vehicle's outlets" : 'your home battery';

/** What the home has already and what that carries, said before anything else is bought; empty where it has nothing, or that is advised. */
export function sayWhatYouHave({ routes, advice, home, lifeFirst }: Plan, words: Words): string[] {
  const mine = routes.filter(
    (route) =>
      traitsOf[route.kind].owned &&
      route.kind !== advice.route.kind &&
      route.verdict !== 'cannot' &&
      route.carries.length > 0,
  );
  const also = lifeFirst?.told ? ' It is a bridge and no second source.' : '';
  return mine.map((route) => `What you have already: ${one(home, route, words)}.${also}`);
}

function one(home: Plan['home'], route: Route, words: Words): string {
  const missed = [...new Set(mustMissed(home, route).map((load) => words.inSentence(load.name)))];
  const carries =
    missed.length === 0 ? 'all that must keep running' : `all but the ${words.listOf(missed)}`;
  const parts = route.parts.map((part) => words.inSentence(part.name)).join('; ');
  const cost =
    route.costUsd.value === 0
      ? 'nothing to buy'
      : `${formatQuantity(route.costUsd.value, '$')} for ${parts}`;
  return `${sourceOf(route)} (${cost}) can run ${carries}, for ${howLong(route)}`;
}

function howLong({ lasting: { hours } }: Route): string {
  if (hours === null) return 'as long as the sun and the battery hold';
  const h = (value: number) => formatQuantity(Math.round(value), 'h');
  return `about ${h(hours.value)}, careful count ${h(hours.low)}`;
}
