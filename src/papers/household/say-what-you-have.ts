import { traitsOf } from '../../kinds/route-traits';
import type { Plan } from '../../plan/plan';
import type { Route } from '../../routes/route';
import type { Words } from '../../words/words';

/** What the home has already and what that carries, said before anything else is bought; empty where it has nothing, or that is advised. */
export function sayWhatYouHave(plan: Plan, words: Words): string[] {
  const { routes, counts, advice, home, lifeFirst } = plan;
  const mine = routes.filter(
    (route) =>
      traitsOf[route.kind].owned &&
      route.kind !== advice.route.kind &&
      !(isVehicle(route) && isVehicle(advice.route) && route.costUsd.value > 0) &&
      route.verdict !== 'cannot' &&
      route.carries.length > 0,
  );
  return mine
    .filter((route) => !mine.some((other) => isBetter(other, route)))
    .map((route) =>
      words.household.whatYouHave.one(route, {
        vehicle: isVehicle(route),
        missed: words.loadNames(home, counts[route.kind].missed),
        lifeTold: lifeFirst?.told === true,
      }),
    );
}

/** The same thing carries as much of it for less money: its outlets on cords before an inlet that feeds no more. */
const isBetter = (a: Route, b: Route) =>
  isVehicle(a) &&
  isVehicle(b) &&
  a.costUsd.value < b.costUsd.value &&
  b.carries.every((id) => a.carries.includes(id));

/** The vehicle that is advised on cords is not told of again for what an inlet would cost: that stands among the ways on. */
const isVehicle = ({ kind }: Route) => traitsOf[kind].vehicle;
