import type { Figure } from '../../../quantity/figure';
import { shown } from '../../../quantity/shown';
import type { Route } from '../../../routes/route';
import { inSentence, listOf } from '../list-of';
import { sayPart } from '../parts/say-part';
import { cappedHours } from './routes';

/** Below this a whole number of hours would be 0. */
const LEAST_HOURS = 0.5;

/** What the home has already. */
export const whatYouHave = {
  one(
    route: Route,
    given: { vehicle: boolean; missed: readonly string[]; lifeTold: boolean },
  ): string {
    const source = given.vehicle ? "your vehicle's outlets" : 'your home battery';
    const missed = [...new Set(given.missed.map(inSentence))];
    const carries =
      missed.length === 0 ? 'all that must keep running' : `all but the ${listOf(missed)}`;
    const parts = route.parts.map((part) => inSentence(sayPart(part.called))).join('; ');
    const cost =
      route.costUsd.value === 0
        ? 'nothing to buy'
        : `${shown(route.costUsd.value, '$')} for ${parts}`;
    const also = given.lifeTold ? ' It is a bridge and no second source.' : '';
    return `What you have already: ${source} (${cost}) can run ${carries}, ${howLong(route)}.${also}`;
  },
};

function howLong({ lasting: { hours, how } }: Route): string {
  // What is counted for it is the time until it drives off; what it holds says more of what is here already.
  if (how.code === 'vehicle-away')
    return `for ${ofCharge(how.storeHours)} while it stays at home; ${how.told ? 'you said' : 'we count'} it is away about ${how.awayHours} hours a day`;
  if (how.code === 'against-goal' && how.of.code === 'unknown-fuel')
    return 'how long we do not know before you tell us more of it';
  if (hours === null) return 'for as long as the sun and the battery hold';
  return `for ${ofCharge(hours)}`;
}

function ofCharge(hours: Figure): string {
  // What rounds to no hour at all is said in words: "about 0 h" reads as if it ran.
  if (hours.value < LEAST_HOURS) return 'less than half an hour';
  const careful = hours.low < LEAST_HOURS ? 'less than half an hour' : cappedHours(hours.low);
  return `about ${cappedHours(hours.value)}, careful count ${careful}`;
}
