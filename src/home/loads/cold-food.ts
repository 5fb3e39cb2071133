import { formula, timesFigure } from '../../quantity/figure-arithmetic';
import type { Load } from '../home';
import { rankOf } from '../load-keys';
import { asFigure, type LoadContext } from './context';
import { makeLoad } from './make-load';

/** Refrigerators and freezers. */
export function coldFood(context: LoadContext): Load[] {
  const fridges = asFigure(context, 'fridge-count', 'count', 'refrigerators');
  const freezers = asFigure(context, 'freezer-count', 'count', 'freezers');
  const loads: Load[] = [];
  if (fridges !== null && fridges.high > 0) {
    const rank = rankOf(context.facts, ['fridge']);
    const fridge = makeLoad('fridge', { rank, count: fridges, restsOn: ['fridge-count'] });
    loads.push(inSummer(context, fridge));
  }
  if (freezers !== null && freezers.high > 0) {
    const rank = rankOf(context.facts, ['freezer']);
    const id = 'freezer-chest';
    const of = { name: 'Freezer', rank, count: freezers, restsOn: ['freezer-count'] };
    loads.push(inSummer(context, makeLoad(id, of)));
  }
  return loads;
}

/** The same with what a warm kitchen adds on a hard summer day of this climate; an outage stops the cooling too. */
function inSummer({ climate }: LoadContext, load: Load): Load {
  const { summer } = load.kwhPerDay;
  if (climate === null) return { ...load, follows: 'room' };
  const warm = timesFigure(summer, climate.warmRoom, {
    name: `${summer.name} in a warm room`,
    source: formula(
      `a day in a room at 70 °F x ${climate.warmRoom.likely.toFixed(2)} for a kitchen as warm as outdoors`,
      [summer],
      'Harrington, Aye & Fuller 2018 for the effect; its size from memory',
    ),
  });
  return { ...load, follows: 'room', kwhPerDay: { ...load.kwhPerDay, summer: warm } };
}
