import type { RouteCounts } from '../../../advice/route-counts';
import { usd } from '../say-dollars';
import { sayToldMoney } from '../told-money';

type Above = NonNullable<RouteCounts['aboveTold']>;

/** By how much a price is above what was told, with a comma before it. */
export const sayAboveTold = ({ byUsd, toldUsd, laterUsd }: Above): string =>
  `, ${usd(byUsd)} above ${sayToldMoney(toldUsd, laterUsd)}`;
