import type { Aspect } from '../../../plan/changes/changes-between';
import type { PlanFacts, Span } from '../../../plan/changes/plan-facts';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import { sayShare } from '../household/share';
import { inSentence, listOf } from '../list-of';
import { sayLoadName } from '../loads/say-load-name';
import { sayRouteTitle } from '../routes/route-titles';
import { usd } from '../say-dollars';
import { sentenceCase } from '../sentence-case';

/** What the things laid side by side are called. */
export const ASPECT_NAMES: Readonly<Record<Aspect, string>> = {
  route: 'What to get',
  price: 'Price',
  hours: 'On a hard day',
  devices: 'Health devices',
  odds: 'Odds',
  refill: 'With a refill',
  'leaves-out': 'Left out',
};

/** One thing of a plan, in a sentence or two. */
export function sayAspect(facts: PlanFacts, code: Aspect): string {
  switch (code) {
    case 'route':
      return sayRoute(facts);
    case 'price':
      return sayPrice(facts.usd);
    case 'hours':
      return sayHours(facts);
    case 'devices':
      return sayDevices(facts);
    case 'odds':
      return sayOdds(facts);
    case 'refill':
      return sayRefill(facts);
    case 'leaves-out':
      return sayLeftOut(facts);
  }
}

/** From so few drawn years figures are rough, and said so. */
const isRough = ({ drawnYears }: PlanFacts) => drawnYears < 100;
const about = (facts: PlanFacts) => (isRough(facts) ? 'about ' : '');
const span = (hours: number) => shown(hours, 'h');

function sayRoute({ undecided, route, size, onlyBridge }: PlanFacts): string {
  if (undecided) return 'Nothing is advised yet: too little is told.';
  if (!route.isSource) return 'Nothing to buy. Get ready with what you have.';
  const kwh = size.usableKwh === null ? [] : [`${formatQuantity(size.usableKwh, 'kWh')} to use`];
  const watts = size.watts === null ? [] : [`a generator of ${shown(size.watts, 'W')}`];
  const solar = size.solarKw === null ? [] : [`${formatQuantity(size.solarKw, 'kW')} of panels`];
  const step = { [-1]: ['one size smaller'], 0: [], 1: ['one size larger'] }[size.step];
  const made = listOf([...step, ...kwh, ...watts, ...solar]);
  const named = route.called === null ? route.title! : sayRouteTitle(route.called);
  const lived = route.thriftily === true ? `${named}, living thriftily` : named;
  const title = onlyBridge ? `Only as a bridge: ${inSentence(lived)}` : lived;
  return made === '' ? `${title}.` : `${title}: ${made}.`;
}

function sayPrice({ low, likely, high }: Span): string {
  const [from, middle, to] = [low, likely, high].map(usd);
  if (from === to) return `${middle}.`;
  return `${from} to ${to}, likely ${middle}.`;
}

function sayHours(facts: PlanFacts): string {
  const { lasts, goalHours, reachesGoal } = facts;
  const want = `You want ${span(goalHours)}`;
  switch (lasts.code) {
    case 'no-power':
      return `It gives no power. ${want}.`;
    case 'not-counted':
      return 'Not counted for this size.';
    case 'no-end-foreseen':
      return `As long as the fuel or gas comes. ${want}.`;
    case 'hours': {
      const { today, stored } = lasts;
      const short = reachesGoal ? '.' : ': it falls short.';
      const now = bothCounts(facts, today);
      const then =
        stored === null
          ? ''
          : ` Once ${formatQuantity(stored.gallons, 'gal')} is stored, ${bothCounts(facts, stored.hours)}.`;
      const counted = stored === null ? '' : ' on the fuel counted today';
      return `${sentenceCase(now)}${counted}.${then} ${want}${short}`;
    }
  }
}

/** "about 22 h, careful count 14 h". */
function bothCounts(facts: PlanFacts, { low, likely }: Span): string {
  const [careful, middle] = [low, likely].map((hours) => (hours < 1 ? 'no hour' : span(hours)));
  const lead = likely < 1 ? '' : about(facts);
  return careful === middle ? `${lead}${middle}` : `${lead}${middle}, careful count ${careful}`;
}

/** The longest outage counted, h. */
const LONGEST = 336;

function sayDevices(facts: PlanFacts): string {
  const { devices } = facts;
  if (devices === null) return 'No such device is named.';
  if (devices === 'none-carried') return 'None of them is carried.';
  const [likely, careful] = [devices.likelyHours, devices.carefulHours].map((hours) =>
    hours >= LONGEST ? 'two weeks or more' : hours < 1 ? 'no hour' : span(hours),
  );
  const lead = devices.likelyHours >= LONGEST ? '' : about(facts);
  return `Alone, all else off: ${lead}${likely}, careful count ${careful}.`;
}

function sayOdds(facts: PlanFacts): string {
  const { odds, goalHours, season } = facts;
  if (odds === null) return 'None are counted.';
  const stored = odds.stored === null ? '' : `, ${share(facts, odds.stored)} with its cans filled`;
  const part = facts.leavesOut.length > 0 ? 'With what it carries, through' : 'Through';
  return `${part} ${share(facts, odds.today)} of 100 outages of ${span(goalHours)} in ${season}${stored}.`;
}

/** A share of outages; from few drawn years it was rounded down to one in twenty. */
function share(facts: PlanFacts, of: number): string {
  if (!isRough(facts)) return sayShare(of);
  if (of >= 0.95) return '95 or more';
  return of < 0.05 ? 'fewer than 5' : `about ${Math.round(100 * of)}`;
}

function sayRefill(facts: PlanFacts): string {
  const { refill } = facts;
  if (refill === null) return 'No refill in time is counted.';
  return `With as much fuel again every ${formatQuantity(24 * refill.everyDays, 'h')}, through ${share(facts, refill.share)} of 100. The plan does not lean on it.`;
}

function sayLeftOut({ leavesOut, lasts }: PlanFacts): string {
  if (lasts.code === 'no-power') return 'All that must keep running.';
  if (leavesOut.length === 0) return 'Nothing that must keep running.';
  return `${sentenceCase(listOf(leavesOut.map(({ name }) => inSentence(typeof name === 'string' ? name : sayLoadName(name)))))}.`;
}
