import { shown } from '../../quantity/shown';
import type { BetweenBlocks } from '../../routes/kinds/generator-blocks';
import type { Stretches } from '../../tables/run-hours';
import { sayHours } from './say-measures';

/** "from 6 to 9 am and 5 to 9 pm". */
export const sayRunHours = (hours: Stretches) => `from ${sayHours(hours)}`;

/** What to look at between the hours of a generator, a sentence each. */
export function sayBetweenBlocks(between: BetweenBlocks): string[] {
  const { roomCools, roomWarms, coldFoodSafeHours } = between;
  return [
    ...(roomCools
      ? [
          'The house cools between those hours: hang a thermometer, and run it sooner, before a room is below 60 °F.',
        ]
      : []),
    ...(roomWarms
      ? [
          'The house warms between those hours: hang a thermometer, and leave before a room stays above 90 °F.',
        ]
      : []),
    ...(coldFoodSafeHours === null
      ? []
      : [
          `A shut refrigerator stays safe for ${shown(coldFoodSafeHours, 'h')} only, so put ice in it, and throw out food that was above 40 °F for over 2 hours.`,
        ]),
  ];
}
