import type { RouteCounts } from '../../../advice/route-counts';
import { formatQuantity } from '../../../quantity/format-quantity';

type Above = NonNullable<RouteCounts['aboveTold']>;

const usd = (dollars: number) => formatQuantity(Math.round(dollars), '$');

/** By how much a price is above what was told, with a comma before it. */
export const sayAboveTold = ({ byUsd, toldUsd }: Above): string =>
  `, ${usd(byUsd)} above the ${usd(toldUsd)} you told us`;
