import type { FirstBuy } from '../../advice/first-buy';
import { formatQuantity } from '../../quantity/format-quantity';
import { inSentence } from './list-of';
import { theRoute } from './routes/route-titles';
import { usd } from './say-dollars';

/** What the money there now buys, and what waits for later money; with a space before it. */
export function sayFirstBuy(first: FirstBuy): string {
  const { nowUsd, shortUsd, part, restUsd, lowUsd, thriftUsd } = first;
  if (part !== null && part.packKwh !== null)
    return ` First, with the ${usd(nowUsd)} you have now: one of ${formatQuantity(part.packKwh, 'kWh')}, about ${usd(part.usd)}. A second beside it, about ${usd(restUsd)}, can wait for later money.`;
  if (part !== null)
    return ` First, with the ${usd(nowUsd)} you have now: ${theRoute(part.called)}, about ${usd(part.usd)}, which stays a part of it. The rest, about ${usd(restUsd)}, can wait for later money.`;
  const waits =
    nowUsd > 0
      ? ` It costs ${usd(shortUsd)} more than the ${usd(nowUsd)} you have now, so all of it waits.`
      : ' All your money is for later, so it waits.';
  const low = lowUsd === null ? '' : ` A low quote (${usd(lowUsd)}) would fit: ask now.`;
  return `${waits}${low}${untilThen(thriftUsd)}`;
}

function untilThen(thriftUsd: number | null): string {
  if (thriftUsd === null) return '';
  const price = thriftUsd > 0 ? `, about ${usd(thriftUsd)}` : ', which costs nothing';
  return ` Until then get ready to live thriftily${price}: see "Need less first".`;
}

/** The step that buys the part that comes first. */
export const sayBuyFirstStep = (parts: readonly string[], partUsd: number) =>
  `When the steps above are done, buy first, with the money there now, about ${usd(partUsd)}: ${parts.map(inSentence).join('; ')}.`;
