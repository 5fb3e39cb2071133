import type { MoneyOfRoute, PlanMoney } from '../../../plan/money/plan-money';
import { formatQuantity } from '../../../quantity/format-quantity';
import { inSentence } from '../list-of';
import { sayBillFit } from '../money/say-bill-fit';
import { sayRouteMoney } from '../money/say-route-money';
import { sayPart } from '../parts/say-part';
import { sayRouteTitle } from '../routes/route-titles';
import { usd } from '../say-dollars';

const hours = (value: number) => formatQuantity(value, 'h');

/** Whether it pays. */
export const money = {
  title: 'Does it pay',
  oldPrices: 'Prices more than two years old, with the routes they are part of:',
  /** `paying`: routes that earn more than they cost; `safetyUsd`: what the route advised costs a year, null where nothing. */
  answer(paying: readonly string[], safetyUsd: number | null): string {
    const safety =
      safetyUsd === null
        ? ''
        : ` The route advised costs about ${usd(safetyUsd)} a year: that is what the safety costs.`;
    if (paying.length === 0) return `No route here earns back its cost on the bill.${safety}`;
    return `At likely prices these earn more than they cost: ${paying.map(inSentence).join('; ')}.${safety} At the high end of the prices that may not hold.`;
  },
  own(
    { money: of, called, ridden }: MoneyOfRoute,
    counted: { years: number; carriesAll: boolean },
  ): string {
    const { perBackupKwh } = of;
    const kwh =
      perBackupKwh === null || perBackupKwh.likely <= 0
        ? ''
        : ` Used in outages alone, each kWh it gives costs about ${usd(perBackupKwh.likely)}.`;
    const { ordinary, major, carried } = ridden;
    const what = counted.carriesAll
      ? 'all that must'
      : `${carried} of the ${ridden.of} that must run`;
    const apart =
      ordinary + major === 0
        ? ''
        : ` It is likely to run ${what} for ${hours(ordinary + major)} a year: ${hours(ordinary)} in ordinary outages and ${hours(major)} in major ones.`;
    return `${sayRouteTitle(called)}: ${sayRouteMoney(of, { years: counted.years }).join(' ')}${kwh}${apart}`;
  },
  offTheGrid: 'Off the grid there is no bill to lower.',
  /** With a space before it. */
  fits: (fit: NonNullable<PlanMoney['billFit']>) =>
    fit.fits
      ? ' The prices fit the dollars on the bill to within 10 %.'
      : ` The prices do not fit the bill: ${sayBillFit(fit)}`,
  /** With a space before it. */
  oneClock:
    ' Daylight saving time is not counted: the sun is taken by standard time all year, so on your clock it stands an hour later in summer than here.',
  losses: (losses: PlanMoney['losses'], sumUsd: number) =>
    `Apart from the bill: by your own estimate, outages cost this household about ${usd(sumUsd)} in an average year (${losses.map((loss) => `${loss.name} ${usd(loss.dollarsPerYear)}`).join(', ')}). It is not counted above.`,
  stages: 'Bought step by step:',
  stage: ({ upTo, parts, dollars }: PlanMoney['stages'][number]) =>
    `${upTo === null ? 'Later' : `With the first ${usd(upTo)}`}: ${parts.map((part) => inSentence(sayPart(part.called))).join('; ')} (about ${usd(dollars)}).`,
  firstThings: 'With the first $100: alarms, lights and water, the first things of getting ready.',
  staysOfUse: 'What is bought earlier stays of use in the later steps.',
};
