import type { WillNot } from '../../../plan/will-not-do';
import { inSentence } from '../list-of';
import { loadName } from '../load-names';
import type { Named } from '../named';
import { sayRouteTitle } from '../routes/route-titles';
import { sayHowLong } from '../routes/say-how-long';
import { sayLeftOut } from '../say-left-out';
import { sayTransferTime } from '../say-transfer-time';
import { sayFailedBefore } from './say-failed-before';
import { sayNoHeatAtNight } from './say-no-heat-at-night';

/** What the advised route will not do, said plainly. */
export function sayWillNot(one: WillNot, home: Named): string {
  switch (one.code) {
    case 'left-out':
      return `${loadName(home, one.load)}${musts[one.must ?? 'no']}: ${sayLeftOut(one.why)}.`;
    case 'not-so-long':
      return sayHowLong(one.lasting);
    case 'too-cold-for-pump':
      return `Below about ${Math.round(one.belowF)} °F outdoors the ${inSentence(loadName(home, one.pump))} runs without a break and still lacks heat, for its strips stay off: the rooms get colder. Close off all but one room, and leave before it stays below 60 °F.`;
    case 'no-heat-at-night':
      return sayNoHeatAtNight(one.awake);
    case 'no-second-source':
      return 'It is no second source for life support: that must not hang on this house at all.';
    case 'dark-gap':
      return `It leaves a dark gap: ${sayTransferTime(one.transferTime)}. Put a small battery at what must not blink.`;
    case 'failed-before':
      return sayFailedBefore(one.failed);
    case 'not-quiet':
      return 'It is not quiet: neighbors hear the generator while it runs.';
    case 'not-clean-air':
      return 'It does not keep the air clean: the generator burns fuel whenever it runs.';
    case 'cords-only':
      return `It feeds nothing that is wired in: no wall outlet, no ceiling light, no pump without a plug.${one.lights ? ' Light comes from lamps with a plug.' : ''}${one.sumpPump ? ' The sump pump runs by its own plug.' : ''}`;
    case 'whole-job-once-stored':
      return `With the ${gallons(one.moreGallons)} still to be stored it would do the whole job at the likely burn.`;
    case 'whole-job-elsewhere':
      return `To do the whole job, the cheapest here would be: ${sayRouteTitle(one.called).toLowerCase()}.`;
  }
}

const musts = {
  told: ', which you said must keep running',
  counted: ', which counts as what must keep running until you tell us',
  no: '',
} as const;

const gallons = (amount: number) => `${amount} ${amount === 1 ? 'gallon' : 'gallons'}`;
