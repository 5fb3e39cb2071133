import type { Home } from '../../../home/home';
import type { HomeTariff } from '../../../plan/money/tariff-of';
import { sayOrigin } from '../explain/say-origin';
import { sayOwnTariff } from '../say-own-tariff';
import { sayPrices } from '../say-prices';
import { sayTariffProblem } from '../tariff/say-tariff-problem';

/** What was taken for the prices of power, and what was left out. */
export function sayTariff(home: Home, { tariff, from }: HomeTariff): string {
  switch (from.code) {
    case 'own-tariff':
      return sayOwnTariff(tariff);
    case 'prices-told':
      return sayPrices(home, from);
    case 'state-average': {
      const cents = (100 * from.price.value).toFixed(1);
      const wrong =
        from.problem === null
          ? ''
          : `The prices told do not fit together: ${sayTariffProblem(from.problem)} `;
      return `${wrong}You told us no price, so we count ${cents} cents a kWh at all hours: ${sayOrigin(from.price.source)}. Your own price may lie a quarter away.`;
    }
  }
}
