import { sayRouteMoney } from '../../../bill/lifecycle/say-route-money';
import type { Tariff } from '../../../bill/tariff/tariff';
import type { RouteKind } from '../../../kinds/route-kind';
import { type MoneyOfRoute, type PlanMoney, STUDY_YEARS } from '../../../plan/money/plan-money';
import { carriesAll } from '../../../plan/money/ridden';
import { formatQuantity } from '../../../quantity/format-quantity';
import type { Words } from '../../../words/words';
import { sayBetween, sayBillOf } from './say-between';
import { sayReserve } from './say-reserve';
import { saySideBySide } from './say-side-by-side';

/** The section "Does it pay": routes side by side over their life, the bill, the reserve, and what is bought first. */
export function sayMoney(money: PlanMoney, advised: RouteKind, words: Words): string[] {
  const own = money.routes.find((route) => route.kind === advised);
  const saving = own?.between ? own : money.routes.find((route) => route.kind === money.reserveOf);
  return [
    '## Does it pay',
    sayAnswer(money, own, words),
    ...saySideBySide(money, words),
    ...(own === undefined ? [] : sayOwn(own, words)),
    ...sayTariff(money),
    ...sayBetween(money.routes, words),
    ...sayBillOf(saving, words),
    ...sayReserve(money, words),
    ...sayLosses(money, words),
    ...sayStages(money, words),
    money.incentiveNotes.join(' '),
    ...(money.oldPrices.length > 0
      ? [
          'Prices more than two years old, with the routes they are part of:',
          bullets(money.oldPrices),
        ]
      : []),
  ];
}

function sayAnswer(money: PlanMoney, own: MoneyOfRoute | undefined, words: Words): string {
  const paying = money.routes.filter((route) => route.money.netPresentValue.likely > 0);
  const cost = own?.money.costPerYear.likely ?? 0;
  const safety =
    own === undefined || cost <= 0
      ? ''
      : ` The route advised costs about ${words.usd(cost)} a year: that is what the safety costs.`;
  if (paying.length === 0) return `No route here earns back its cost on the bill.${safety}`;
  const names = paying.map((route) => words.inSentence(route.title)).join('; ');
  return `At likely prices these earn more than they cost: ${names}.${safety} At the high end of the prices that may not hold.`;
}

function sayOwn({ money, title, ridden }: MoneyOfRoute, words: Words): string[] {
  const { perBackupKwh } = money;
  const kwh =
    perBackupKwh === null || perBackupKwh.likely <= 0
      ? ''
      : ` Used in outages alone, each kWh it gives costs about ${words.usd(perBackupKwh.likely)}.`;
  const { ordinary, major } = ridden;
  const apart =
    ordinary + major === 0
      ? ''
      : ` It is likely to run ${carriesAll(ridden) ? 'all that must' : `${ridden.carried} of the ${ridden.of} that must run`} for ${hours(ordinary + major)} a year: ${hours(ordinary)} in ordinary outages and ${hours(major)} in major ones.`;
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
  return [`${tariff.says}${fit} ${use}${sayClock(tariff.tariff)}`];
}

/** Where hours have prices of their own the clock matters, and the plan keeps to one clock. */
function sayClock({ seasons, demand = [], export: sold }: Tariff): string {
  const byClock =
    seasons.some(({ periods }) => periods.length > 1) ||
    demand.some(({ hours }) => hours !== undefined) ||
    sold.rule === 'hourly-credit';
  return byClock
    ? ' Daylight saving time is not counted: the sun is taken by standard time all year, so on your clock it stands an hour later in summer than here.'
    : '';
}

function sayLosses({ losses }: PlanMoney, words: Words): string[] {
  const sum = losses.reduce((total, loss) => total + loss.dollarsPerYear, 0);
  if (sum <= 0) return [];
  return [
    `Apart from the bill: by your own estimate, outages cost this household about ${words.usd(sum)} in an average year (${losses.map((loss) => `${loss.name} ${words.usd(loss.dollarsPerYear)}`).join(', ')}). It is not counted above.`,
  ];
}

function sayStages({ stages, carriesOver }: PlanMoney, words: Words): string[] {
  const name = (upTo: number | null) =>
    upTo === null ? 'Later' : `With the first ${words.usd(upTo)}`;
  const lines = stages
    .filter((stage) => stage.parts.length > 0)
    .map(
      (stage) =>
        `${name(stage.upTo)}: ${stage.parts.map((p) => words.inSentence(p.name)).join('; ')} (about ${words.usd(stage.dollars)}).`,
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

const hours = (value: number) => formatQuantity(value, 'h');
const bullets = (items: readonly string[]) =>
  items.map((item) => `- ${item.replace(/[*_`|]/g, '')}`).join('\n');
