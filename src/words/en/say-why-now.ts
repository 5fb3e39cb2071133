import type { JobThen, WhyNow } from '../../advice/why-now';
import type { RouteKind } from '../../kinds/route-kind';
import { usd } from './say-dollars';

/** A way to get backup power inside a sentence. */
const routeInSentence: Readonly<Record<RouteKind, string>> = {
  preparation: 'getting ready without buying a source',
  'own-battery': 'the battery you have',
  'single-battery': 'a small battery for one job',
  'power-pack': 'a plug-in battery',
  'engine-cords': 'a generator with cords',
  'engine-inlet': 'a generator wired to the house',
  'standby-engine': 'a fixed generator that starts by itself',
  'battery-circuits': 'a battery for some circuits',
  'battery-whole': 'a battery for the whole home',
  'battery-solar': 'a battery with solar panels',
  'battery-engine': 'a battery with a generator',
  vehicle: 'power from a vehicle',
  'vehicle-inlet': 'a vehicle wired to chosen circuits',
};

/** Why a question is asked now, in one sentence; empty in the opening, which needs no reason of its own. */
export function sayWhyNow(why: WhyNow): string {
  switch (why.code) {
    case 'opening':
      return '';
    case 'in-its-words':
      return 'You just told us of a rule: its own words are easy to copy now.';
    case 'asked-again':
      return 'Without it there can be no plan. Tell what you know so far; you can change it at any time.';
    case 'could-forbid':
      return `It is about safety, and could rule out ${either(why.routes)}.`;
    case 'when-to-leave':
      return 'It decides when to leave with the device.';
    case 'may-hurt-here':
      return 'It decides which dangers at your home we must warn of.';
    case 'what-is-owned':
      return 'It tells what the battery you have can do, before you buy anything.';
    case 'opens-route':
      return `It decides whether ${routeInSentence[why.route]} is possible${jobs[why.job]}${difference(why.usd)}.`;
    case 'closes-route':
      return `It decides whether ${routeInSentence[why.route]} stays possible${without[why.job]}${difference(why.usd)}.`;
    case 'turns-route':
      return `It decides between ${routeInSentence[why.from]} and ${routeInSentence[why.to]}${jobs[why.job]}${difference(why.usd)}.`;
    case 'moves-price':
      return `It can move the price, from about ${rough(why.lowUsd)} to ${rough(why.highUsd)}.`;
    case 'moves-hours':
      return `It can move how long the power lasts, from about ${hours(why.low)}${why.high === null ? ' to no end in sight' : ` to ${hours(why.high)}`}.`;
    case 'closes-beside':
      return `It could rule out ${either(why.routes)}, the other choice here.`;
    case 'moves-share':
      return 'It decides how much of what must run is carried.';
  }
}

/** What it does of the job comes before its price. */
const jobs: Readonly<Record<JobThen, string>> = {
  whole: ', which does the whole job',
  'whole-for-more': ', and whether anything can do the whole job',
  more: ', which does more of the job',
  less: ', which does less of the job',
  same: '',
};

const without: Readonly<Record<JobThen, string>> = {
  ...jobs,
  whole: '; another does the whole job',
  'whole-for-more': '; another kind could then do the whole job',
  more: '; another does more of the job',
  less: '; without it less of the job is done',
};

/** Below this a difference in price is no reason, $. */
const WORTH_SAYING_USD = 50;

function difference(dollars: number): string {
  return dollars < WORTH_SAYING_USD ? '' : `: a difference of about ${rough(dollars)}`;
}

/** Two digits that count: $9,000, $450. */
function rough(dollars: number): string {
  const step = dollars >= 10_000 ? 1000 : dollars >= 1000 ? 100 : 10;
  return usd(Math.round(dollars / step) * step);
}

const hours = (value: number) => `${Math.round(value)} hours`;

/** The first two routes are reason enough. */
function either(routes: readonly RouteKind[]): string {
  return routes
    .slice(0, 2)
    .map((kind) => routeInSentence[kind])
    .join(' or ');
}
