import type { Advice } from '../advice/advice';
import type { Home } from '../home/home';
import type { LoadId } from '../home/loads/load-id';
import { loadName } from '../home/loads/load-names';
import { wasTold } from '../home/loads/load-told';
import { hasGenerator, isSource, isWired } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import { bridges } from '../routes/gap';
import { carriesAllMust } from '../routes/must-carried';
import type { Route } from '../routes/route';
import { sayHowLong } from '../words/en/routes/say-how-long';
import { sayGap } from '../words/en/say-gap';
import { sayLeftOut } from '../words/en/say-left-out';
import { failedBefore, sayFailedBefore } from './cautions/failed-before';
import type { FuelToStore } from './fuel/fuel-to-store';
import { nightWithoutHeat } from './night-without-heat';
import { tooColdForPump } from './too-cold-for-pump';

/** Only what was told is said to have been told. */
function sayMust(home: Home, id: LoadId): string {
  const load = home.loads.find((one) => one.id === id);
  return load !== undefined && wasTold(home.facts, load)
    ? ' You said it must keep running.'
    : ' It counts as what must keep running until you tell us.';
}

/** What the advised route will not do, said plainly. */
export function willNotDo(home: Home, advice: Advice, fuel: FuelToStore | null): string[] {
  const { route } = advice;
  const lines = [...new Map(route.leavesOut.map((load) => [load.load, load])).values()].map(
    ({ load, why, must }) =>
      `${loadName(home, load)}: ${sayLeftOut(why)}.${must ? sayMust(home, load) : ''}`,
  );
  if (!route.lasting.reachesGoal) lines.push(sayHowLong(route.lasting));
  const cold = tooColdForPump(home, route);
  if (cold !== null) lines.push(cold);
  const night = nightWithoutHeat(home, route);
  if (night !== null) lines.push(night);
  if (home.lifeSupport !== 'no') {
    lines.push('It is no second source for life support: that must not hang on this house at all.');
  }
  const power = isSource(traitsOf[route.kind]);
  if (power && home.facts.is('goal-gap', 'no-blink', 'minute') && !bridges(route.gap)) {
    lines.push(
      `It leaves a dark gap: ${sayGap(route.gap)}. Put a small battery at what must not blink.`,
    );
  }
  lines.push(...failedBefore(home, route).map(sayFailedBefore), ...againstAims(home, route));
  if (power && !isWired(traitsOf[route.kind])) lines.push(byCordOnly(route));
  if (fuel?.reachesGoal === true && carriesAllMust(home, route)) {
    lines.push(
      `With the ${gallons(fuel)} still to be stored it would do the whole job at the likely burn.`,
    );
  } else if (advice.wholeJob !== null) {
    lines.push(
      `To do the whole job, the cheapest here would be: ${advice.wholeJob.title.toLowerCase()}.`,
    );
  }
  return lines;
}

/** Other aims told that a generator works against. */
function againstAims({ facts }: Home, route: Route): string[] {
  if (!facts.told('other-aims') || !hasGenerator(traitsOf[route.kind])) return [];
  return [
    ...(facts.has('other-aims', 'quiet')
      ? ['It is not quiet: neighbors hear the generator while it runs.']
      : []),
    ...(facts.has('other-aims', 'clean-air')
      ? ['It does not keep the air clean: the generator burns fuel whenever it runs.']
      : []),
  ];
}

const gallons = ({ moreGallons }: FuelToStore) =>
  `${moreGallons} ${moreGallons === 1 ? 'gallon' : 'gallons'}`;

/** Without wiring only what has a plug runs; said of the light and the pumps, which people take for wired in. */
function byCordOnly(route: Route): string {
  const carried = (id: LoadId) => route.carries.includes(id);
  const lights = carried('lights-led') ? ' Light comes from lamps with a plug.' : '';
  const sump =
    carried('sump') && !traitsOf[route.kind].oneJob ? ' The sump pump runs by its own plug.' : '';
  return `It feeds nothing that is wired in: no wall outlet, no ceiling light, no pump without a plug.${lights}${sump}`;
}
