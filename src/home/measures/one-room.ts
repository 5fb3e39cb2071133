import type { Answer } from '../../interview/answers';
import type { Load } from '../home';
import { inOneRoom } from '../loads/one-room';
import { climateHours } from '../weather/climate-hours';
import type { Change, Household } from './household';
import { cools, warms } from './warm-and-cool';

/** The loads of one room where the whole home counts, as told or because nobody has asked yet, for one season of the goal. */
function asOneRoom(given: Household, loads: readonly Load[], season: 'winter' | 'summer') {
  const { facts, site, goalSeasons } = given;
  const whole = facts.told('one-room')
    ? facts.is('one-room', 'no')
    : facts.applies('one-room') && !facts.asked('one-room');
  if (!whole || !goalSeasons.includes(season)) return loads;
  const told = new Map<string, Answer>([
    ['one-room', 'yes'],
    ['goal-season', season],
  ]);
  const climate = climateHours(site.place.climate);
  const context = { facts: facts.asIfTold(told), widths: new Map(), climate };
  const room = inOneRoom(context, loads, loads);
  const counts = season === 'winter' ? warms : cools;
  return room.some((load) => load.onlyInOutage && counts(load)) ? room : loads;
}

export const oneRoom: Change = (of, loads) => asOneRoom(of, loads, 'winter');
export const roomUnit: Change = (of, loads) => asOneRoom(of, loads, 'summer');
