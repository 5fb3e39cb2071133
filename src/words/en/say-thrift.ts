import type { AddOn } from '../../plan/steps/add-ons';
import { shown } from '../../quantity/shown';
import { inSentence } from './list-of';
import { usd } from './say-dollars';
import { addOnName, addOnUsd } from './steps/say-add-on';

/** What goes on a list of things to buy for living thriftily, $; nothing where it takes nothing. */
export const sayThrift = (thriftUsd: number) =>
  thriftUsd > 0 ? `; and about ${shown(thriftUsd, '$')} for what living thriftily takes` : '';

/** The step that buys what is plugged in, by the names of its parts. */
export const sayBuyStep = (
  parts: readonly string[],
  thriftUsd: number,
  waitsUsd: number,
  roomUnits: readonly AddOn[],
) =>
  `When the steps above are done${waitsUsd > 0 ? ` and ${usd(waitsUsd)} more is there` : ''}, buy: ${parts.map(inSentence).join('; ')}${sayRoomUnits(roomUnits)}${sayThrift(thriftUsd)}.`;

/** What the one room takes, on the same list; nothing without one. */
export const sayRoomUnits = (roomUnits: readonly AddOn[]) =>
  roomUnits
    .map(
      (one) =>
        `; for the one room, if you have none, a ${inSentence(addOnName(one))}, ${addOnUsd(one)}`,
    )
    .join('');
