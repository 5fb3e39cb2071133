import type { ChoiceId } from '#compiled/question-ids.js';
import { operand, timesFigure, worked } from '../../quantity/figure-arithmetic';
import type { HouseholdLoadId } from '../../tables/household-loads';
import { practice } from '../../tables/practice-figures';
import type { Load } from '../home';
import { asFigure, type LoadContext } from './context';
import { rankOf } from './load-keys';
import { makeLoad } from './make-load';

const rows: Readonly<Partial<Record<ChoiceId<'water-heater'>, HouseholdLoadId>>> = {
  'electric-tank': 'electric-water-heater',
  'heat-pump-tank': 'heat-pump-water-heater',
  'gas-plug': 'gas-power-vent-water-heater',
  'tankless-gas': 'tankless-gas',
  'tankless-electric': 'tankless-electric',
};

/** The rows stand for three people; hot water follows how many there are. */
const PEOPLE_OF_ROW = practice('hot-water-people');

/** The water heater, where it uses electricity. An electric tankless heater is off in any outage. */
export function hotWater(context: LoadContext): Load[] {
  const { facts } = context;
  const kind = facts.choice('water-heater');
  const row = kind === null ? undefined : rows[kind];
  if (row === undefined) return [];
  const load = makeLoad(row, {
    id: 'water-heater',
    rank: rankOf(facts, ['water-heater']),
    wired: true,
    offInOutage: kind === 'tankless-electric',
    restsOn: ['water-heater', 'people-count'],
  });
  const people = asFigure(context, 'people-count', 'people');
  if (people === null) return [load];
  const ofRow = operand(PEOPLE_OF_ROW, 'people', 'people-of-row', { kind: 'practice' });
  const share = worked(
    { by: 'ratio', of: [people], under: [ofRow] },
    { unit: 'count', is: 'people-share' },
  );
  const { winter, summer, mild } = load.kwhPerDay;
  const kwhPerDay = {
    winter: timesFigure(winter, share),
    summer: timesFigure(summer, share),
    mild: timesFigure(mild, share),
  };
  return [{ ...load, kwhPerDay }];
}
