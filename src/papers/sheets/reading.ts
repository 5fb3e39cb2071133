import { readingOf } from '../../plan/ladder/ladder-reading';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';

/** A rung as it is read off the device, in a few words. */
export function shortReading(plan: Plan, atPercent: number, words: Words): string {
  if (atPercent === 100) return words.sheets.reading.fromStart;
  const reading = readingOf(plan, atPercent);
  switch (reading.of) {
    case 'charge':
      return words.sheets.reading.charge(reading.percent);
    case 'vehicle':
      return words.sheets.reading.vehicle(reading.percent);
    case 'cans':
    case 'tank':
      return words.sheets.reading.gallons(words.quantity(reading.gallons, 'gal'));
    case 'strain':
      return words.sheets.reading.strain;
  }
}
