import type { DayOfYear, TariffProblem } from '../../../bill/tariff/tariff-fault';
import type { TariffName } from '../../../bill/tariff/tariff-name';
import { sayTariffName } from './say-tariff-name';

/** What is wrong with a tariff whose form is right, and what to do. */
export function sayTariffProblem(problem: TariffProblem): string {
  switch (problem.code) {
    case 'no-season-covers':
      return `${problem.list.join(' ')}: no season covers ${date(problem.day)}. Close the gap.`;
    case 'seasons-overlap':
      return `${problem.list.join(' ')}: ${quoted(problem.seasons)} both cover ${date(problem.day)}. Keep one.`;
    case 'no-period-covers':
      return `${season(problem)}: no period covers ${hourOf(problem)}. Give that time a price.`;
    case 'periods-overlap':
      return `${season(problem)}: periods ${quoted(problem.periods)} both cover ${hourOf(problem)}. Shorten one of them.`;
    case 'last-tier-has-end':
      return `${season(problem)}: the last tier must have no end.`;
    case 'tier-without-end':
      return `${season(problem)}: tier ${problem.tier} needs an end in kWh.`;
    case 'tiers-out-of-order':
      return `${season(problem)}: tier ${problem.tier} ends at ${problem.kwh} kWh, not after tier ${problem.tier - 1} (${problem.beforeKwh} kWh).`;
    case 'tier-basis-missing':
      return `${season(problem)}: say if tiers count per day or month, with tierBasis.`;
    case 'demand-prices-overlap':
      return `demand charge "${sayTariffName(problem.charge)}": two prices cover ${date(problem.day)}. Keep one.`;
    case 'holiday-not-known':
      return `holiday "${problem.holiday}" is not known. Write MM-DD or one of: ${problem.known.join(', ')}.`;
    case 'netting-by-period':
      return `${season(problem)} has ${problem.periods} periods: net metering must say netting: by-period.`;
    case 'period-of-no-hours':
      return `${season(problem)}: period "${sayTariffName(problem.period)}" starts and ends at ${problem.hour}:00. Write [0, 24] for the whole day.`;
    case 'price-in-cents':
      return `a price of ${problem.price} is $${problem.price} for one kWh. Prices stand in dollars: write ${problem.price / 100} for ${problem.price} cents.`;
  }
}

const season = (given: { readonly season: TariffName }) =>
  `season "${sayTariffName(given.season)}"`;
const date = ({ month, dayOfMonth }: DayOfYear) => `${month}/${dayOfMonth}`;
const quoted = (names: readonly TariffName[]) =>
  names.map((name) => `"${sayTariffName(name)}"`).join(' and ');

const hourOf = ({ hour, weekend }: { readonly hour: number; readonly weekend: boolean }) =>
  `${hour}:00 to ${hour + 1}:00 on ${weekend ? 'weekends' : 'weekdays'}`;
