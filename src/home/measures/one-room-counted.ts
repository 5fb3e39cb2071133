import type { Home, Load, Season } from '../home';
import type { Saves } from './saves';

/**
 * What one room takes less than the whole home, where the household said that one is enough and the sums count it so:
 * what heats and cools the home stays off, and what stands in its place is taken away from it. Null where nothing does.
 */
export function oneRoomCounted(
  { facts, loads, usualLoads, goalSeasons }: Home,
  season: 'winter' | 'summer',
): Saves | null {
  if (!facts.told('one-room') || !facts.is('one-room', 'yes')) return null;
  if (!goalSeasons.includes(season)) return null;
  const uses = (load: Load, when: Season) => load.kwhPerDay[when].value;
  const off = loads.filter((load) => load.offInOutage && uses(load, season) > 0);
  const whole = usualLoads.filter(
    (load) =>
      load.follows !== 'neither' && load.follows !== 'room' && off.some(({ id }) => id === load.id),
  );
  const rank = ['must', 'good'].find((one) => whole.some((load) => load.rank === one));
  // Heat or cooling that nobody asked for is no measure, and no room is promised.
  if (rank === undefined) return null;
  const room = loads.filter((load) => load.onlyInOutage && uses(load, season) > 0);
  const less = (of: (load: Load) => number) => Math.max(0, sum(whole, of) - sum(room, of));
  return {
    of: rank as 'must' | 'good',
    season,
    runningWatts: less((load) => load.runningWatts.value),
    startVa: less((load) => (load.startVa ?? load.runningVa).value),
    kwhPerDay: less((load) => uses(load, season)),
    packKwhPerDay: 0,
  };
}

const sum = (loads: readonly Load[], of: (load: Load) => number) =>
  loads.reduce((total, load) => total + of(load), 0);
