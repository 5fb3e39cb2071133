import type { Failed } from '../../../plan/cautions/failed-before';

const failures: Readonly<Record<Failed, string>> = {
  cold: 'the home got too cold',
  heat: 'the home got too hot',
  'no-water': 'no water came from the tap',
  flood: 'water came into the home',
  food: 'food went bad',
  medical: 'there was trouble with a health device or medicine',
  phones: 'phones or the internet went dead',
  'frozen-pipes': 'pipes froze',
};

/** "It may happen again: in a past outage pipes froze, and this route carries nothing against it." */
export const sayFailedBefore = (failed: Failed): string =>
  `It may happen again: in a past outage ${failures[failed]}, and this route carries nothing against it.`;
