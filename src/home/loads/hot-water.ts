import type { Load } from '../home';
import { rankOf } from '../load-keys';
import type { LoadContext } from './context';
import { makeLoad } from './make-load';

const rows: Readonly<Record<string, string>> = {
  'electric-tank': 'electric-water-heater',
  'heat-pump-tank': 'heat-pump-water-heater',
  'gas-plug': 'gas-power-vent-water-heater',
  'tankless-gas': 'tankless-gas',
  'tankless-electric': 'tankless-electric',
};

/** The water heater, where it uses electricity. An electric tankless heater is off in any outage. */
export function hotWater({ facts }: LoadContext): Load[] {
  const kind = facts.value('water-heater');
  const row = typeof kind === 'string' ? rows[kind] : undefined;
  if (row === undefined) return [];
  return [
    makeLoad(row, {
      id: 'water-heater',
      rank: rankOf(facts, ['water-heater']),
      wired: true,
      offInOutage: kind === 'tankless-electric',
      restsOn: ['water-heater'],
    }),
  ];
}
