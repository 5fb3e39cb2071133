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
    loads.push(makeLoad('fridge', { rank, count: fridges, restsOn: ['fridge-count'] }));
  }
  if (freezers !== null && freezers.high > 0) {
    const rank = rankOf(context.facts, ['freezer']);
    const id = 'freezer-chest';
    loads.push(
      makeLoad(id, { name: 'Freezer', rank, count: freezers, restsOn: ['freezer-count'] }),
    );
  }
  return loads;
}
