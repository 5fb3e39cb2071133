import type { MustCarried } from '../../../advice/ride/odds';
import type { Season } from '../../../home/home';
import type { RouteTitle } from '../../../kinds/route-title';
import type {
  BadCase,
  Basis,
  GoalOnceStored,
  RouteRide,
} from '../../../plan/ride-through/ride-through';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shownRange } from '../../../quantity/shown';
import { inSentence } from '../list-of';
import { months } from '../months';
import { sayBasis } from '../ride-through/say-basis';
import { sayFailsFirst } from '../ride-through/say-fails-first';
import { sayNeighbor, sayOtherUse } from '../ride-through/say-neighbor';
import { sayRouteTitle } from '../routes/route-titles';
import { sayShare } from './share';

const span = (hours: number) => formatQuantity(hours, 'h');
const carried = ({ things, of }: MustCarried) =>
  things === of ? `all ${of}` : `${things} of ${of}`;
const giveOrTake = (standardError: number | null) =>
  standardError === null || standardError < 0.005
    ? ''
    : ` (give or take ${Math.ceil(standardError * 100)})`;

/** How the routes ride through outages. */
export const rideThrough = {
  title: 'How it rides through',
  /** `onFuel`: cans are still to be filled. */
  counted: (season: Season, onFuel: boolean) =>
    `Out of 100 outages that start at any hour in ${season} with everything full${onFuel ? ', on the fuel counted today' : ''}, so many are ridden through with what the route carries of what must keep running:`,
  /** What the two counts are: the same words wherever a figure is called likely or careful. */
  twoCounts:
    'Likely means likely use, the likely fuel and the middle start hour. Careful means the high end of every use, the low end of the fuel, a thirsty generator and a hard start hour.',
  outageOf: 'Outage of',
  carriesRow: 'carries of what must run',
  carried,
  length: (hours: number, isGoal: boolean) => `${span(hours)}${isGoal ? ' (your goal)' : ''}`,
  notCounted: 'not counted',
  share: (share: number, standardError: number | null) =>
    `${sayShare(share)}${giveOrTake(standardError)}`,
  hasError: (standardError: number | null) => giveOrTake(standardError) !== '',
  carefulRow: (goalHours: number) => `${span(goalHours)}, careful count`,
  storedRow: (goalHours: number) => `${span(goalHours)}, cans filled`,
  storedCarefulRow: (goalHours: number) => `${span(goalHours)}, cans filled, careful`,
  /** What a letter at the head of a column stands for. */
  key: (letter: string, called: RouteTitle, stored: GoalOnceStored | null) =>
    `${letter}: ${inSentence(sayRouteTitle(called))}${stored === null ? '' : `; ${formatQuantity(stored.gallons, 'gal')} with its cans filled`}`,
  noCans: 'no cans to fill',
  basis: (bases: readonly Basis[], giveOrTakeShown: boolean) =>
    `Counted from ${[...new Set(bases.map(sayBasis))].join('; and ')}.${giveOrTakeShown ? ' "Give or take" is one standard error of the sample.' : ''} Weather can be worse than any year drawn.`,
  failsFirst: ({ called, failsFirst }: RouteRide) =>
    `${sayRouteTitle(called)}: ${sayFailsFirst(failsFirst)}.`,
  /** With what is good to have, and with everything where that was counted. */
  withMore: (good: number, all: number | undefined, goalHours: number) =>
    `With what is good to have as well it rides through ${sayShare(good)} of 100 outages of ${span(goalHours)}${all === undefined ? '' : `, with everything ${sayShare(all)}`}.`,
  fromHalfFull: (share: number, goalHours: number) =>
    `Starting half full instead of full: ${sayShare(share)} of 100 outages of ${span(goalHours)}. Before a storm with warning, fill it up.`,
  unserved: (given: { kwh: number; hours: number; goalHours: number; season: Season }) =>
    `On average ${formatQuantity(given.kwh, 'kWh')} over ${span(Math.max(1, Math.round(given.hours)))} goes unserved in an outage of ${span(given.goalHours)} in ${given.season}.`,
  usedOtherwise: (variants: RouteRide['variants'], goalHours: number) =>
    `Used otherwise, of 100 outages of ${span(goalHours)}: ${variants
      .map(
        ({ use, share, standardError, carefulShare }) =>
          `${sayOtherUse(use)}: ${sayShare(share)}${giveOrTake(standardError)} (careful count ${sayShare(carefulShare)})`,
      )
      .join('; ')}.`,
  stepsBeside: ({ called }: RouteRide, goalHours: number) =>
    `One step beside it, of 100 outages of ${span(goalHours)} (${inSentence(sayRouteTitle(called))}):`,
  stepBeside(beside: RouteRide['neighbors'][number]): string {
    const { step, odds, carefulOdds, oddsOnceStored, costUsd } = beside;
    const says = sayNeighbor(step);
    if (odds === null) return `${says}: does not run or start all of it`;
    const then =
      oddsOnceStored === undefined
        ? ''
        : ` on the fuel counted today, ${sayShare(oddsOnceStored)} once the cans are filled`;
    const careful = ` (careful count ${sayShare(carefulOdds ?? 0)})`;
    const { low, value, high } = costUsd;
    return `${says}: ${sayShare(odds)}${careful}${then}, ${shownRange({ low, value, high }, '$')}`;
  },
  /** A route and its share; a part of what must run where it carries no more. */
  other: (called: RouteTitle, carries: MustCarried, share: number) =>
    `${sayRouteTitle(called)}${carries.things === carries.of ? '' : ` (carries ${carried(carries)})`}: ${sayShare(share)}`,
  others: (each: readonly string[], given: { goalHours: number; season: Season; years: number }) =>
    `The other batteries that could work here, of 100 outages of ${span(given.goalHours)} in ${given.season}, counted from ${given.years} of the drawn years: ${each.join('; ')}.`,
  /** How much to keep, by month, 0 to 1; null where full is not enough. */
  keep(byMonth: readonly (number | null)[], goalHours: number): string {
    const goal = span(goalHours);
    if (byMonth.every((share) => share === null))
      return `It is too small to carry 9 in 10 outages of ${goal} in any month, so all of it is kept for outages, all year.`;
    const percent = (share: number | null) =>
      share === null ? 'full is not enough' : `${Math.ceil(share * 100)} %`;
    const steps = byMonth.map((share) => (share === null ? null : Math.ceil(share * 20)));
    const said =
      new Set(steps).size === 1
        ? `${percent(byMonth[0]!)}, all year`
        : byMonth.map((share, month) => `${months[month]} ${percent(share)}`).join(', ');
    return `Kept for outages, to carry 9 in 10 of ${goal}: ${said}.`;
  },
  hardCase(bad: BadCase, season: Season, goalHours: number): string {
    const stored =
      bad.storedGal === undefined ? '' : ` with ${formatQuantity(bad.storedGal, 'gal')} stored`;
    const when = `${months[bad.month]}, starting at ${bad.hourOfDay}:00`;
    return bad.endsAfter === null
      ? `By the careful count (drawn for ${when}; one start in ten in ${season} is harder)${stored} it is ridden through for all of ${span(goalHours)}.`
      : `By the careful count (drawn for ${when}; one start in ten in ${season} is harder)${stored} it ends after ${span(bad.endsAfter)}.`;
  },
};
