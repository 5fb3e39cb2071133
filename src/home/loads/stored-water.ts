import type { Figure } from '../../quantity/figure';
import { timesFigure } from '../../quantity/figure-arithmetic';
import { practice } from '../../tables/practice-figures';
import type { Facts } from '../facts';
import type { Load } from '../home';

/**
 * Water a person needs a day to drink, cook and wash, gal: 15 L, the least of the Sphere Handbook 2018, water supply
 * standard 2.1 (from memory).
 */
export const GALLONS_A_PERSON = practice('water-a-person');

/**
 * A well pump rests while stored water lasts: its likely and low day shrink by the share of the outage's water that
 * is stored. The high end stays, for a pump that runs all the same. In the outage alone: no bill knows of it.
 */
export function withStoredWater(facts: Facts, loads: readonly Load[]): Load[] {
  const share = 1 - coveredShare(facts);
  if (share === 1) return [...loads];
  const rested = (kwh: Figure) =>
    timesFigure(
      kwh,
      { low: share, likely: share, high: 1 },
      {
        source: {
          kind: 'told',
          is: { code: 'stored-water', share: 1 - share, gallonsAPerson: GALLONS_A_PERSON },
          cite: [
            { ref: 'Sphere Handbook 2018, water supply standard 2.1: 15 L a person a day' },
            'from-memory',
          ],
          from: [kwh],
        },
      },
    );
  return loads.map((load) => {
    if (load.id !== 'well') return load;
    const { winter, summer, mild } = load.kwhPerDay;
    return {
      ...load,
      kwhPerDay: { winter: rested(winter), summer: rested(summer), mild: rested(mild) },
      restsOn: [...load.restsOn, 'water-stored'],
    };
  });
}

/** Animals kept outside drink more than jugs hold, and nobody was asked how much: then the pump does not rest. */
function coveredShare(facts: Facts): number {
  if (facts.told('animals') && facts.has('animals', 'stay-outside')) return 0;
  const stored = facts.told('water-stored') ? (facts.number('water-stored') ?? 0) : 0;
  const days = (facts.number('goal-hours') ?? 72) / 24;
  const people = Math.max(1, facts.number('people-count') ?? 1);
  return Math.min(1, stored / (GALLONS_A_PERSON * people * Math.max(days, 1)));
}
