import { formatQuantity } from '../../../quantity/format-quantity';

const usd = (dollars: number) => formatQuantity(Math.round(dollars), '$');

/** By how much a price is above what was told, with a comma before it. */
export const sayAboveTold = (costUsd: number, toldUsd: number): string =>
  `, ${usd(costUsd - toldUsd)} above the ${usd(toldUsd)} you told us`;
