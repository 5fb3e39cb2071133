import type { Home, Load, Season } from '../../home/home';
import { holdsMedicine } from '../../home/measures/holds-medicine';
import { cools, warms } from '../../home/measures/warm-and-cool';
import { foodSafety } from '../../tables/food-safety';
import { namedValue } from '../../tables/named-values';
import { runHours } from '../../tables/run-hours';
import type { Fitted } from '../fit-power';
import { fuelHours, fuelUse } from '../generator-size';
import { hungryShare } from '../hungry-share';
import type { Note } from '../note';
import type { FuelUse, GeneratorSize } from '../route';

/** 1 in the hours in which a generator with real work to do would be run. */
const BLOCKS = Array.from({ length: 24 }, (_, h) =>
  runHours.some(([from, until]) => h >= from && h < until) ? 1 : 0,
);

interface Of {
  readonly fitted: Fitted;
  readonly generator: Pick<GeneratorSize, 'ratedKw' | 'siteKw' | 'type'>;
  readonly fuel: FuelUse;
  readonly season: Season;
}

/** Fuel of a generator that runs in the blocks only, with what it carries caught up in them as far as it goes. */
export function blockFuel(
  carried: readonly Load[],
  { generator, fuel, season }: Omit<Of, 'fitted'>,
): FuelUse {
  return fuelUse({
    generator: generator.type,
    fuel: fuel.fuel,
    ratedKw: generator.ratedKw,
    siteKw: generator.siteKw,
    wattsByHour: blockWatts(carried, season),
    hungry: hungryShare(carried, season),
    runsByHour: BLOCKS,
    atHand: fuel.tank ?? fuel.atHand,
    besidePerDay: fuel.besidePerDay,
  });
}

/** The longest stretch of the day without the generator, h. */
export const LONGEST_PAUSE = longestPause(BLOCKS);

function longestPause(runs: readonly number[]): number {
  const starts = runs.flatMap((on, hour) => (on === 1 ? [hour] : []));
  const pauses = starts.map((hour, i) => {
    const next = starts[i + 1] ?? starts[0]! + runs.length;
    return next - hour - 1;
  });
  return Math.max(...pauses);
}

/** What is no longer as it should be between the blocks. */
export interface BetweenBlocks {
  /** So long a shut refrigerator stays safe, h, where they are further apart and it is carried; null elsewhere. */
  readonly coldFoodSafeHours: number | null;
  /** Heat, or cooling, stops between the hours. */
  readonly roomCools: boolean;
  readonly roomWarms: boolean;
}

export function betweenBlocks({ goalSeasons }: Home, carried: readonly Load[]): BetweenBlocks {
  const safe = namedValue(foodSafety, 'closed-fridge').value;
  const warmsFood = carried.some(({ id }) => id === 'fridge') && LONGEST_PAUSE > safe;
  return {
    coldFoodSafeHours: warmsFood ? safe : null,
    roomCools: carried.some(warms) && goalSeasons.includes('winter'),
    roomWarms: carried.some(cools) && goalSeasons.includes('summer'),
  };
}

/** What running in blocks would burn, what stands still between them, and for what it must never be done. */
export function blockNotes(home: Home, { fitted, generator, fuel, season }: Of): Note[] {
  const blocks = blockFuel(fitted.carried, { generator, fuel, season });
  const hours = fuelHours(blocks)?.value ?? null;
  const still = fitted.carried.filter((load) => !hasItsOwnBattery(load)).map((load) => load.called);
  const { perDay, unit } = blocks;
  return [
    {
      code: 'by-timetable',
      runHours,
      burnsPerDay: perDay.value,
      unit,
      lastsHours: hours,
      still,
      ...betweenBlocks(home, fitted.carried),
    },
    ...never(home, fitted.carried),
  ];
}

/** Pumps, tanks and batteries that make up for the hours they stood still; so does all that cools or heats. */
const CATCH_UP = ['phone-charging', 'laptop', 'well', 'waste', 'sump', 'water-heater'];

/**
 * What loads draw by hour where they have power only in the blocks, W: what was missed between them is made up for in
 * them, as far as the running power goes; light and the like are simply off.
 */
export function blockWatts(loads: readonly Load[], season: Season): number[] {
  const blockHours = BLOCKS.reduce<number>((sum, on) => sum + on, 0);
  const watts = (load: Load, hour: number) => {
    const dayWh = 1000 * load.kwhPerDay[season].value;
    const catchesUp = load.follows !== 'neither' || CATCH_UP.includes(load.id);
    return catchesUp
      ? Math.min(load.runningWatts.value, dayWh / blockHours)
      : dayWh * load.shape[hour]!;
  };
  return BLOCKS.map((on, hour) =>
    on === 0 ? 0 : loads.reduce((sum, load) => sum + watts(load, hour), 0),
  );
}

/** Charged in the hours of the generator, it goes on between them. */
const hasItsOwnBattery = ({ id }: Load) => ['phone-charging', 'laptop'].includes(id);

function never(home: Home, carried: readonly Load[]): Note[] {
  const devices = carried.filter((load) => load.life || load.restsOn.includes('medical-devices'));
  const lines: Note[] = devices.map(({ called }) => ({ code: 'no-timetable-for', called }));
  if (carried.some((load) => holdsMedicine(home, load))) lines.push('no-timetable-for-medicine');
  if (carried.some((load) => load.id === 'sump')) {
    lines.push(
      home.facts.is('sump', 'one-with-battery') ? 'sump-on-its-battery' : 'water-rises-between',
    );
  }
  if (carried.some((load) => load.id === 'waste')) lines.push('no-drain-between');
  return lines;
}
