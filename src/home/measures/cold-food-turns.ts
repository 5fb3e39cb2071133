import { foodSafety } from '../../tables/food-safety';
import type { MeasureRow } from '../../tables/measures';
import { namedValue } from '../../tables/named-values';
import type { Load } from '../home';
import type { Change, Household } from './household';
import { changing, lessened } from './lessen';

const hoursSafe = (id: 'closed-fridge' | 'half-full-freezer') => namedValue(foodSafety, id).value;

/** A refrigerator goes two hours on at least and as many off as it stays safely cold when shut, four times a day. */
const FRIDGE = { cycle: 2 + hoursSafe('closed-fridge'), leastOn: 2, from: 1 } as const;
/** A freezer goes twice a day, while people are awake; hours off stay far below those of a half-full one. */
const FREEZER = { cycle: 12, leastOn: 2, from: 6 } as const;

/** Hours of the day in which it has power; 1 or 0 by hour. */
export function turnsOf(
  { cycle, leastOn, from }: { cycle: number; leastOn: number; from: number },
  hoursAsked: number,
): number[] {
  const on = Math.min(cycle, Math.max(leastOn, Math.ceil((hoursAsked * cycle) / 24 - 1e-9)));
  return Array.from({ length: 24 }, (_, hour) =>
    ((hour - from + 24) % cycle) % cycle < on ? 1 : 0,
  );
}

/** In turns by thermometer: as many hours as the compressor needs on the hungriest of the goal's days. */
function inTurns(
  household: Household,
  load: Load,
  { row, turns }: { row: MeasureRow; turns: typeof FRIDGE | typeof FREEZER },
): Load {
  const less = lessened(load, row.share!, row);
  const kwh = Math.max(...household.goalSeasons.map((season) => less.kwhPerDay[season].value));
  const on = turnsOf(turns, (1000 * kwh) / load.runningWatts.value);
  const hours = on.reduce((sum, one) => sum + one, 0);
  return { ...less, shape: on.map((one) => one / hours), steadyShape: load.shape };
}

export const fridgeTurns: Change = (of, loads, row) =>
  changing(
    loads,
    (load) => load.id === 'fridge',
    (load) => inTurns(of, load, { row, turns: FRIDGE }),
  );

export const freezerTurns: Change = (of, loads, row) =>
  changing(
    loads,
    (load) => load.id === 'freezer-chest',
    (load) => inTurns(of, load, { row, turns: FREEZER }),
  );
