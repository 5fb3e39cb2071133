import type { QuestionId } from '#compiled/question-ids.js';
import { type Figure, figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import type { Load } from '../home';
import { asFigure, type LoadContext } from './context';

/** The load with its energy of a day by the hours of use that were told or are assumed; as it was where neither is. */
export function byHoursTold(context: LoadContext, load: Load, hoursId: QuestionId): Load {
  const hours = asFigure(context, hoursId, 'h', `hours a day of the ${load.name}`);
  if (hours === null) return load;
  return {
    ...load,
    kwhPerDay: everyDayOf(load, hours),
    shape: shapeFor(load.shape, hours.value),
    restsOn: [...load.restsOn, hoursId],
  };
}

/** The usual hours of the day, unless more is used than they hold: then it is spread evenly. */
function shapeFor(shape: readonly number[], hours: number): readonly number[] {
  const fullHours = Math.max(...shape) * hours;
  return fullHours > 1 + 1e-9 ? shape.map(() => 1 / 24) : shape;
}

/** Energy of a day from the hours of use, the same in every season. */
export function everyDayOf({ name, runningWatts: watts }: Load, hours: Figure): Load['kwhPerDay'] {
  const day = figure({
    value: (watts.value * hours.value) / 1000,
    low: (watts.low * hours.low) / 1000,
    high: (watts.high * hours.high) / 1000,
    unit: 'kWh/day',
    name: `energy of the ${name}`,
    source: formula('power x hours a day', [watts, hours]),
  });
  return { winter: day, summer: day, mild: day };
}
