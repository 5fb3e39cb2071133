import type { Reason, ReasonCode } from '../../advice/reason';
import { sayRouteTitle } from './routes/route-titles';
import { sayToldMoney } from './told-money';

/** Why the route is advised, in a sentence or two. */
export function sayWhyAdvised(reason: Reason): string {
  const { code, budgetUsd, lessPluggedIn } = reason;
  const parts = [sentences[code](reason)];
  if (budgetUsd === null && code !== 'too-little-told' && code !== 'no-source-open') {
    parts.push(NO_MONEY_TOLD);
  }
  if (reason.thriftily) parts.push(THRIFTILY);
  if (lessPluggedIn) parts.push(LESS_PLUGGED_IN);
  return parts.join(' ');
}

const sentences: Readonly<Record<ReasonCode, (reason: Reason) => string>> = {
  'too-little-told': () => 'Too little is answered to advise more yet.',
  'no-source-open': () => `No route that gives power is open here yet. ${READY}`,
  'no-source-in-budget': ({ budgetUsd, laterUsd, cheapest }) =>
    `No route that gives power fits ${sayToldMoney(budgetUsd!, laterUsd)}. The cheapest, ${sayRouteTitle(cheapest!.called).toLowerCase()}, is likely to cost ${usd(cheapest!.usd)}, ${usd(cheapest!.usd - budgetUsd!)} more. ${READY}`,
  'cheapest-enough': (reason) =>
    `Of all routes and sizes that carry all that must keep running through at least 9 of 10 such outages, it costs least${fits(reason)}.`,
  'cheapest-enough-but-off': (reason) =>
    `No backup carries all that you named. Of all routes and sizes that carry the rest through at least 9 of 10 such outages, it costs least${fits(reason)}.`,
  'nearest-all': (reason) =>
    `No route ${within(reason)} does the whole job. This one comes nearest: it carries all that must run for the most of the time.`,
  'nearest-part': (reason) =>
    `No route ${within(reason)} does the whole job. This one comes nearest: it carries the most of what must run for the most of the time.`,
};

const READY = 'Getting ready costs little and is worth doing first.';
const NO_MONEY_TOLD =
  'You told us no amount of money, so none set a limit here: say what you can spend, and this may change.';
const LESS_PLUGGED_IN =
  'With less plugged in it lasts longer, as long as a battery for one job of the same size.';

const THRIFTILY =
  'It counts on living thriftily in the outage: lanterns for ceiling lights, and things used by turns.';

const usd = (dollars: number) => `$${Math.round(dollars).toLocaleString('en-US')}`;
const fits = ({ budgetUsd, laterUsd }: Reason) =>
  budgetUsd === null ? '' : `, and it fits ${sayToldMoney(budgetUsd, laterUsd)}`;
const within = ({ budgetUsd, laterUsd }: Reason) =>
  budgetUsd === null ? 'here' : `within ${sayToldMoney(budgetUsd, laterUsd)}`;
