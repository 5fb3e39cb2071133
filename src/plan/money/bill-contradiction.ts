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
  const { low, high } = fit.expected;
  const range = high - low < 1 ? `$${low.toFixed(0)}` : `$${low.toFixed(0)} to $${high.toFixed(0)}`;
  return {
    id: 'bill-not-matched',
    asks: fit.says,
    answers: [
      `The bill was $${home.facts.number('bill-dollars')}.`,
      `Its kWh at the prices ${ownTariff === null ? 'told' : 'of your own tariff'} come to ${range}.`,
    ],
    questions: ['bill-kwh', 'bill-dollars', 'bill-price', 'bill-lines'],
  };
}
