import type { Tariff } from '../../bill/tariff/tariff';
import type { Home } from '../../home/home';
import type { Contradiction } from '../contradictions/contradiction';
import { billFit } from './bill-fit';
import { tariffOf } from './tariff-of';

/** Prices and kWh that do not come to the dollars of the bill, to within 10 %. */
export function billNotMatched(home: Home, ownTariff: Tariff | null): Contradiction | null {
  const of = tariffOf(home, ownTariff);
  const fit = of === null ? null : billFit(home, of);
  if (fit === null || fit.fits) return null;
  return {
    id: 'bill-not-matched',
    dollars: home.facts.number('bill-dollars')!,
    ownTariff: ownTariff !== null,
    fit,
    questions: ['bill-kwh', 'bill-dollars', 'bill-price', 'bill-lines'],
  };
}
