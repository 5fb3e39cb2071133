import { assumedTariff } from '../../bill/tariff/assumed-tariff';
import { checkTariff } from '../../bill/tariff/check-tariff';
import type { Tariff } from '../../bill/tariff/tariff';
import { tariffFromBill } from '../../bill/tariff/tariff-from-bill';
import type { Home } from '../../home/home';
import { sayOwnTariff } from '../../words/en/say-own-tariff';
import { sayPrices } from '../../words/en/say-prices';
import { billReadingOf } from './bill-reading-of';

/** How the household pays for power, as far as it told us. */
export interface HomeTariff {
  readonly tariff: Tariff;
  /** Told by the household, or the state's average. */
  readonly told: boolean;
  /** What we took for it, and what was left out. */
  readonly says: string;
}

/**
 * The household's own tariff where it gave one; else the tariff from what was told of the bill; else the average of
 * the state. Null off the grid.
 */
export function tariffOf(home: Home, own: Tariff | null = null): HomeTariff | null {
  if (home.facts.is('home-kind', 'off-grid')) return null;
  if (own !== null) return { tariff: own, told: true, says: sayOwnTariff(own) };
  const reading = billReadingOf(home);
  if (reading === null) return averageOf(home);
  const tariff = tariffFromBill(reading);
  const problems = checkTariff(tariff);
  if (problems.length > 0) return averageOf(home, problems[0]);
  return { tariff, told: true, says: sayPrices(home, reading) };
}

function averageOf(home: Home, problem?: string): HomeTariff {
  const { tariff, price } = assumedTariff(home.site.state);
  const cents = (100 * price.value).toFixed(1);
  const wrong = problem === undefined ? '' : `The prices told do not fit together: ${problem} `;
  const says = `${wrong}You told us no price, so we count ${cents} cents a kWh at all hours: ${price.source.label}. Your own price may lie a quarter away.`;
  return { tariff, told: false, says };
}
