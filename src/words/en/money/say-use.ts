import type { HouseUse } from '../../../plan/money/house-year';
import type { PeaksKnown } from '../../../plan/money/peak-factors-of';
import { months } from '../months';

/** What the use over the year is taken from, and how the peaks of a demand charge are known. */
export function sayUse({ use, peaks }: { use: HouseUse; peaks: PeaksKnown | null }): string {
  return `Use over the year: ${sayHouseUse(use)}${peaks === null ? '' : ` ${sayPeaks(peaks)}`}`;
}

function sayHouseUse(use: HouseUse): string {
  switch (use.code) {
    case 'loads-alone':
      return 'the loads named, for no bill could be held against them.';
    case 'loads-and-rest':
      return 'the loads named, and what the bill shows beyond them.';
    case 'brought-down':
      return `the loads named, brought down to ${Math.round(100 * use.share)} % so that they meet the bill.`;
    case 'by-months': {
      const { lowered } = use;
      if (lowered.length === 0) return 'each month as on its own bill.';
      const when =
        lowered.length === 12 ? 'every month' : lowered.map((month) => months[month]).join(', ');
      return `each month as on its own bill. In ${when} the loads named were more than the bill and were brought down to it.`;
    }
  }
}

function sayPeaks(given: PeaksKnown): string {
  switch (given.code) {
    case 'by-the-meter':
      return 'The peaks of the demand charge go by the highest use of the year you told us.';
    case 'not-from-hours':
      return 'The peak of the demand charge cannot be told from hours, so its highest hour is counted: the real one may be higher.';
    case 'estimated':
      return `The peak of a short window is estimated from your loads as ${given.times.toFixed(2)} times the highest hour (our judgment); the meter may show another.`;
  }
}
