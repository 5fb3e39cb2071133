import { assumedTariff } from '../../bill/tariff/assumed-tariff';
import type { BillReading } from '../../bill/tariff/bill-reading';
import { checkTariff } from '../../bill/tariff/check-tariff';
import type { Tariff } from '../../bill/tariff/tariff';
import { tariffFromBill } from '../../bill/tariff/tariff-from-bill';
import type { Home } from '../../home/home';
import type { Figure } from '../../quantity/figure';
import { billReadingOf } from './bill-reading-of';
import { type LineLeftOut, linesLeftOut } from './more-lines';

type Problem = ReturnType<typeof checkTariff>[number];

/** What was taken for the prices, and what was left out; `words` says it. */
export type TariffFrom =
  | { readonly code: 'own-tariff' }
  | {
      readonly code: 'prices-told';
      readonly reading: BillReading;
      readonly leftOut: readonly LineLeftOut[];
    }
  /** The state's average; `problem` is why the prices told could not be used. */
  | { readonly code: 'state-average'; readonly price: Figure; readonly problem: Problem | null };

/** How the household pays for power, as far as it told us. */
export interface HomeTariff {
  readonly tariff: Tariff;
  /** Told by the household, or the state's average. */
  readonly told: boolean;
  readonly from: TariffFrom;
}

/**
 * The household's own tariff where it gave one; else the tariff from what was told of the bill; else the average of
 * the state. Null off the grid.
 */
export function tariffOf(home: Home, own: Tariff | null = null): HomeTariff | null {
  if (home.facts.is('home-kind', 'off-grid')) return null;
  if (own !== null) return { tariff: own, told: true, from: { code: 'own-tariff' } };
  const reading = billReadingOf(home);
  if (reading === null) return averageOf(home, null);
  const tariff = tariffFromBill(reading);
  const [problem] = checkTariff(tariff);
  if (problem !== undefined) return averageOf(home, problem);
  const leftOut = linesLeftOut(home);
  return { tariff, told: true, from: { code: 'prices-told', reading, leftOut } };
}

function averageOf(home: Home, problem: Problem | null): HomeTariff {
  const { tariff, price } = assumedTariff(home.site.state);
  return { tariff, told: false, from: { code: 'state-average', price, problem } };
}
