import type { MoneyRange } from '../../bill/money-range';
import { sayPayback } from '../../bill/payback';
import { sayBill } from '../../bill/say-bill';
import { sayRouteMoney } from '../../bill/say-route-money';
import type { RouteKind } from '../../home/route-kind';
import { formatQuantity } from '../../quantity/format-quantity';
import { inSentence } from '../list-of';
import type { BetweenOutages } from './between-outages';
import { type MoneyOfRoute, type PlanMoney, REAL_RATE, STUDY_YEARS } from './plan-money';
import { sayReserve } from './say-reserve';

/** The section "Does it pay": routes side by side over their life, the bill, the reserve, and what is bought first. */
export function sayMoney(money: PlanMoney, advised: RouteKind): string[] {
  const own = money.routes.find((route) => route.kind === advised);
  const saving = own?.between ? own : money.routes.find((route) => route.kind === money.reserveOf);
  return [
    '## Does it pay',
    sayAnswer(money, own),
    sideBySide(money),
    `Counted over ${STUDY_YEARS} years in today's dollars at ${100 * REAL_RATE} % a year above inflation: purchase, work, permit, fuel, upkeep, replacement and what is left at the end, less what comes off the bill after wear. Doing nothing costs nothing here, and leaves about ${hours(money.outageHours.ordinary + money.outageHours.major)} without power in an average year.`,
    ...(own === undefined ? [] : sayOwn(own)),
    ...sayTariff(money),
    ...money.routes.flatMap((route) => sayBetween(route)),
    ...sayBillOf(saving),
    ...sayReserve(money),
    ...sayLosses(money),
    ...sayStages(money),
    money.incentiveNotes.join(' '),
    ...(money.oldPrices.length > 0 ? [bullets(money.oldPrices)] : []),
  ];
}

function sayAnswer(money: PlanMoney, own: MoneyOfRoute | undefined): string {
  const paying = money.routes.filter((route) => route.money.netPresentValue.likely > 0);
  const cost = own?.money.costPerYear.likely ?? 0;
  const safety =
    own === undefined || cost <= 0
      ? ''
      : ` The route advised costs about ${usd(cost)} a year: that is what the safety costs.`;
  if (paying.length === 0) return `No route here earns back its cost on the bill.${safety}`;
  const names = paying.map((route) => inSentence(route.title)).join('; ');
  return `At likely prices these earn more than they cost: ${names}.${safety} At the high end of the prices that may not hold.`;
}

function sideBySide({ routes }: PlanMoney): string {
  const row = (route: MoneyOfRoute) => {
    const { money } = route;
    const saves = money.byCase.likely.savings > 0 ? usd(route.between?.savings ?? 0) : 'nothing';
    const cells = [
      route.title,
      range(money.firstCost),
      saves,
      range(money.costPerYear),
      sayPayback(money.byCase.likely.simplePayback, STUDY_YEARS),
      money.perOutageHour === null ? 'carries none' : usd(money.perOutageHour.likely),
      route.lifeYears === null ? 'does not wear' : formatQuantity(route.lifeYears, 'years'),
      usd(route.upkeepPerYear),
      route.noise,
      `${formatQuantity(route.leadWeeks.low, 'count')} to ${formatQuantity(route.leadWeeks.high, 'count')} weeks`,
    ];
    return `| ${cells.join(' | ')} |`;
  };
  return [
    '| Route | To begin with | Off the bill a year | Cost a year | Paid back | An outage hour | Life | Upkeep a year | Noise | Wait |',
    '|---|---|---|---|---|---|---|---|---|---|',
    ...routes.map(row),
  ].join('\n');
}

function sayOwn({ money, title, ridden }: MoneyOfRoute): string[] {
  const { perBackupKwh, perOrdinaryHour } = money;
  const kwh =
    perBackupKwh === null || perBackupKwh.likely <= 0
      ? ''
      : ` Used in outages alone, each kWh it gives costs about ${usd(perBackupKwh.likely)}.`;
  const apart =
    perOrdinaryHour === null
      ? ''
      : ` Of ${hours(ridden.ordinary + ridden.major)} a year it is likely to carry, ${hours(ridden.ordinary)} are in ordinary outages and ${hours(ridden.major)} in major ones.`;
  return [`${title}: ${sayRouteMoney(money, { years: STUDY_YEARS }).join(' ')}${kwh}${apart}`];
}

function sayTariff({ tariff, billFit, use }: PlanMoney): string[] {
  if (tariff === null) return ['Off the grid there is no bill to lower.'];
  const fit =
    billFit === null
      ? ''
      : billFit.fits
        ? ' The prices fit the dollars on the bill to within 10 %.'
        : ` The prices do not fit the bill: ${billFit.says}`;
  return [`${tariff.says}${fit} ${use}`];
}

const doing = {
  'self-use': 'it stores spare sun for the evening',
  'time-shift': 'it charges in the cheapest hours and works in the dearest',
  both: 'it stores spare sun, and charges and works by the price of the hour',
  'peak-limit': 'it holds down the highest use of the month',
  wait: 'it stays full and waits',
} as const;

function sayBetween({ title, between }: MoneyOfRoute): string[] {
  if (between === null) return [];
  const does = between.worthRunning ? doing[between.strategy] : doing.wait;
  const battery = between.savings - between.solarSavings;
  const solar =
    between.solarSavings > 0 ? `solar takes off about ${usd(between.solarSavings)} a year; ` : '';
  const gain = between.worthRunning
    ? `the battery takes off about ${usd(battery)} a year, of which ${usd(between.wear)} goes in wear`
    : `the battery takes nothing off the bill, because ${whyNothing(between)}`;
  const kept = Math.max(...between.keptKwh);
  return [
    `${title}, between outages: ${does}. ${capital(`${solar}${gain}.`)} Kept for outages: up to ${formatQuantity(kept, 'kWh')}.${sayCeiling(between)}`,
  ];
}

function whyNothing({ strategy, keptKwh, input, ceilingNote }: BetweenOutages): string {
  if (strategy === 'wait') return ceilingNote;
  const all = input !== null && Math.min(...keptKwh) > 0.95 * input.battery.usableKwh;
  return all
    ? 'all of it is kept for outages'
    : 'what is not kept for outages would earn less than it wears';
}

function sayCeiling({ ceiling, ceilingNote, savings, wear, worthRunning }: BetweenOutages): string {
  if (!worthRunning) return '';
  if (ceiling === null) return ` ${capital(ceilingNote)}.`;
  const share = ceiling > 1 ? (savings - wear) / ceiling : 1;
  const short = share < 0.9 ? ', and the rule falls short because it knows the past only' : '';
  const note = ceilingNote === '' ? '' : ` (${ceilingNote})`;
  return ` If every hour were known beforehand it could be ${usd(ceiling)} after wear${note}${short}.`;
}

/** The bill of July without and with the route advised, line by line. */
function sayBillOf(own: MoneyOfRoute | undefined): string[] {
  const between = own?.between;
  if (!own || !between || Math.abs(between.before.total - between.after.total) < 1) return [];
  const july = (bill: BetweenOutages['before']) =>
    sayBill(bill.months[6]!).map((line) => `- ${line}`);
  return [
    `The bill of July as it would stand without it (${inSentence(own.title)}):`,
    july(between.before).join('\n'),
    'And with it:',
    july(between.after).join('\n'),
  ];
}

function sayLosses({ losses }: PlanMoney): string[] {
  const sum = losses.reduce((total, loss) => total + loss.dollarsPerYear, 0);
  if (sum <= 0) return [];
  return [
    `Apart from the bill: by your own estimate, outages cost this household about ${usd(sum)} in an average year (${losses.map((loss) => `${loss.name} ${usd(loss.dollarsPerYear)}`).join(', ')}). It is not counted above.`,
  ];
}

function sayStages({ stages, carriesOver }: PlanMoney): string[] {
  const name = (upTo: number | null) => (upTo === null ? 'Later' : `With the first ${usd(upTo)}`);
  const lines = stages
    .filter((stage) => stage.parts.length > 0)
    .map(
      (stage) =>
        `${name(stage.upTo)}: ${stage.parts.map((p) => inSentence(p.name)).join('; ')} (about ${usd(stage.dollars)}).`,
    );
  if (lines.length === 0) return [];
  // Getting ready is one row of the table; a hundred dollars buys the first things of it.
  if (stages[0]!.parts.length === 0) {
    lines.unshift(
      'With the first $100: alarms, lights and water, the first things of getting ready.',
    );
  }
  return [
    'Bought step by step:',
    bullets([...lines, 'What is bought earlier stays of use in the later steps.', ...carriesOver]),
  ];
}

/** Whole dollars, from 1,000 to the nearest ten. */
export function usd(value: number): string {
  const step = Math.abs(value) >= 1000 ? 10 : 1;
  const rounded = Math.round(value / step) * step;
  return `${rounded < 0 ? '-' : ''}$${Math.abs(rounded).toLocaleString('en-US')}`;
}

function range({ low, high }: MoneyRange): string {
  return usd(low) === usd(high) ? usd(low) : `${usd(low)} to ${usd(high)}`;
}

const hours = (value: number) => formatQuantity(value, 'h');
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const bullets = (items: readonly string[]) =>
  items.map((item) => `- ${item.replace(/[*_`|]/g, '')}`).join('\n');
