import type { QuestionId } from '#compiled/question-ids.js';
import type { Figure } from '../../quantity/figure';
import { formula, WATTS_IN_KW, worked } from '../../quantity/figure-arithmetic';
import type { Load } from '../home';
import { asFigure, type LoadContext } from './context';

/** The load with its energy of a day by the hours of use that were told or are assumed; as it was where neither is. */
export function byHoursTold(context: LoadContext, load: Load, hoursId: QuestionId): Load {
  const hours = asFigure(context, hoursId, 'h');
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
export function everyDayOf(
  { called, runningWatts: watts }: Load,
  hours: Figure,
): Load['kwhPerDay'] {
  const day = worked(
    { by: 'ratio', of: [watts, hours], under: [WATTS_IN_KW] },
    {
      unit: 'kWh/day',
      name: { code: 'energy-by-hours', load: called },
      source: formula('hours-a-day', [watts, hours]),
    },
  );
  return { winter: day, summer: day, mild: day };
}
