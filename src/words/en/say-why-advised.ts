import type { OtherEnough } from '../../advice/list/other-enough';
import type { Reason, ReasonCode } from '../../advice/reason';
import { sayShare } from './household/share';
import { sayRouteTitle, theRoute } from './routes/route-titles';
import { usd } from './say-dollars';
import { sentenceCase } from './sentence-case';
import { sayToldMoney } from './told-money';
import { warmOrCool } from './warm-or-cool';

/** Why the route is advised, in a sentence or two. */
export function sayWhyAdvised(reason: Reason): string {
  const { code, budgetUsd, lessPluggedIn } = reason;
  const parts = [sentences[code](reason)];
  if (budgetUsd === null && !withoutMoney.includes(code)) {
    parts.push(NO_MONEY_TOLD);
  }
  if (reason.thriftily && code !== 'no-power-needed') parts.push(THRIFTILY);
  if (lessPluggedIn) parts.push(LESS_PLUGGED_IN);
  return parts.join(' ');
}

const sentences: Readonly<Record<ReasonCode, (reason: Reason) => string>> = {
  'too-little-told': () => 'Too little is answered to advise more yet.',
  'nothing-named': () =>
    `You named nothing that must keep running, so there is nothing to buy power for. ${READY}`,
  'no-source-open': () => `No route that gives power is open here yet. ${READY}`,
  'no-source-in-budget': ({ budgetUsd, laterUsd, cheapest }) =>
    `No route that gives power fits ${sayToldMoney(budgetUsd!, laterUsd)}. The cheapest, ${sayRouteTitle(cheapest!.called).toLowerCase()}, is likely to cost ${usd(cheapest!.usd)}, ${usd(cheapest!.usd - budgetUsd!)} more. ${READY}`,
  'no-power-needed': (reason) =>
    `If you live thriftily, nothing that must keep running needs power, so no power source is worth buying for it.${sayOthers(reason)}`,
  'none-worth-it': (reason) =>
    `No route ${within(reason)} carries what must run for long enough to be worth its price. ${READY}`,
  'cheapest-enough': (reason) =>
    `Of all routes and sizes that carry all that must keep running through at least 9 of 10 such outages${asUsual(reason)}, it costs least${butFor(reason)}${fits(reason)}.${sayOthers(reason)}`,
  'cheapest-enough-but-off': (reason) =>
    `No backup carries all that you named. Of all routes and sizes that carry the rest through at least 9 of 10 such outages${asUsual(reason)}, it costs least${butFor(reason)}${fits(reason)}.${sayOthers(reason)}`,
  'nearest-all': (reason) =>
    `No route ${within(reason)} does the whole job${wholeHome(reason)}. ${near(reason)} all that must run for much of the time.`,
  'nearest-part': (reason) =>
    `No route ${within(reason)} does the whole job${wholeHome(reason)}. ${near(reason)} ${reason.tooDear === null ? 'the most of what must run for much of the time' : 'a part of what must run'}.`,
};

/** "About as near as any" is not true where money was kept back: then what would do more is named, with its price. */
function near({ tooDear }: Reason): string {
  if (tooDear === null) return 'This one comes about as near as any: it carries';
  const { called, larger, apartUsd } = tooDear;
  const more = larger ? 'A larger size of it' : sentenceCase(theRoute(called));
  return `${more} does more of it, for ${usd(apartUsd)} more, ${usd(tooDear.usd)} in all. We judge that what it adds is not worth that. This one carries`;
}

/** Where one room in its place would do it within the money, "the whole job" is that of the whole home, and the room is named. */
const wholeHome = ({ oneRoom }: Reason) =>
  oneRoom === null
    ? ''
    : ` with the whole home ${warmOrCool(oneRoom, 'and')}; with one ${warmOrCool(oneRoom, 'or')} room in its place something does (see "Ways on")`;

type Standing = OtherEnough['standing'];

const has = ({ others }: Reason, standing: Standing) =>
  others.some((one) => one.standing === standing);

/** "Costs least" holds only among those that ask for no more comfort, and but for cans: both are said. */
const asUsual = (reason: Reason) =>
  has(reason, 'thriftily') ? ', with nothing turned off or used by turns' : '';
const butFor = (reason: Reason) => (has(reason, 'less-fuel') ? ' but for its fuel cans' : '');

const other: Readonly<Record<Standing, (one: OtherEnough) => string>> = {
  thriftily: ({ called, usd: price, apartUsd }) =>
    ` For ${usd(apartUsd)} less, ${usd(price)} in all, ${theRoute(called)} does it too, but only if you live thriftily.`,
  'less-fuel': ({ apartUsd, odds, advisedOdds }) =>
    ` With fewer cans it is ${usd(apartUsd)} less and carries ${sayShare(odds / 100)} of 100 such outages in place of ${sayShare(advisedOdds / 100)}.`,
  'as-usual': ({ called, usd: price, apartUsd }) =>
    ` To go on as usual would take ${theRoute(called)}, ${usd(price)} in all, ${usd(apartUsd)} more.`,
};

const sayOthers = ({ others }: Reason) => others.map((one) => other[one.standing](one)).join('');

/** Money decides nothing here. */
const withoutMoney: readonly ReasonCode[] = ['too-little-told', 'nothing-named', 'no-source-open'];

const READY = 'Getting ready costs little and is worth doing first.';
const NO_MONEY_TOLD =
  'You told us no amount of money, so none set a limit here: say what you can spend, and this may change.';
const LESS_PLUGGED_IN = 'With fewer things plugged in it lasts longer.';

const THRIFTILY =
  'It counts on living thriftily in the outage: lanterns for ceiling lights, and things used by turns.';

const fits = ({ budgetUsd, laterUsd }: Reason) =>
  budgetUsd === null ? '' : `, and it fits ${sayToldMoney(budgetUsd, laterUsd)}`;
const within = ({ budgetUsd, laterUsd }: Reason) =>
  budgetUsd === null ? 'here' : `within ${sayToldMoney(budgetUsd, laterUsd)}`;
