import type { RouteCounts } from '../../../advice/route-counts';
import { shown } from '../../../quantity/shown';
import { usd } from '../say-dollars';
import { sayToldMoney } from '../told-money';

type Above = NonNullable<RouteCounts['aboveTold']>;

/** By how much a price is above what was told, with a comma before it. */
export const sayAboveTold = ({ byUsd, toldUsd, laterUsd }: Above): string =>
  `, ${usd(byUsd)} above ${sayToldMoney(toldUsd, laterUsd)}`;

/** A price that fits only as long as it is not at its high end, with a space before it. */
export const sayHighAbove = (
  { highUsd, byUsd, toldUsd }: NonNullable<RouteCounts['highAbove']>,
  installed: boolean,
): string =>
  ` ${installed ? 'A quote' : 'The price'} may go to ${exactly(highUsd)}, ${exactly(byUsd)} above the ${exactly(toldUsd)} you told us.`;

/** As a range of prices is printed, so that its end is the same figure here. */
const exactly = (dollars: number) => shown(dollars, '$');
