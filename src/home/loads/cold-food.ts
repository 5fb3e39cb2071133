import { type Figure, figure } from '../../quantity/figure';
import { formula, timesFigure } from '../../quantity/figure-arithmetic';
import type { Load } from '../home';
import { asFigure, type LoadContext } from './context';
import { rankOf } from './load-keys';
import { makeLoad } from './make-load';

/** Refrigerators and freezers. */
export function coldFood(context: LoadContext): Load[] {
  const fridges = howMany(context, 'fridge-count', 'fridge');
  const freezers = howMany(context, 'freezer-count', 'freezer');
  const loads: Load[] = [];
  if (fridges !== null) {
    const rank = rankOf(context.facts, ['fridge']);
    const fridge = makeLoad('fridge', { rank, count: fridges, restsOn: ['fridge-count'] });
    loads.push(inSummer(context, fridge));
  }
  if (freezers !== null) {
    const rank = rankOf(context.facts, ['freezer']);
    const id = 'freezer-chest';
    const of = {
      called: { code: 'freezer' },
      rank,
      count: freezers,
      restsOn: ['freezer-count'],
    } as const;
    loads.push(inSummer(context, makeLoad(id, of)));
  }
  return loads;
}

/** How many there are; one at least where it was ticked as what must run and nobody counted. Null: none. */
function howMany(
  context: LoadContext,
  id: 'fridge-count' | 'freezer-count',
  key: 'fridge' | 'freezer',
): Figure | null {
  const { facts } = context;
  const count = asFigure(context, id, 'count');
  const ticked = facts.told('must-run') && facts.has('must-run', key);
  if (ticked && !facts.told(id) && (count === null || count.value < 1)) {
    const source = { kind: 'told', is: 'must-run' } as const;
    return figure({ value: 1, unit: 'count', is: { code: 'answer', question: id }, source });
  }
  return count !== null && count.value > 0 ? count : null;
}

/** The same with what a warm kitchen adds on a hard summer day of this climate; an outage stops the cooling too. */
function inSummer({ climate }: LoadContext, load: Load): Load {
  const { summer } = load.kwhPerDay;
  if (climate === null) return { ...load, follows: 'room' };
  const warm = timesFigure(summer, climate.warmRoom, {
    name: { code: 'in-warm-room', day: summer.name },
    source: formula(
      { code: 'warm-kitchen', factor: climate.warmRoom.likely },
      [summer],
      [
        { of: 'effect-of-a-warm-room', ref: 'Harrington, Aye & Fuller 2018' },
        'its-size-from-memory',
      ],
    ),
  });
  return { ...load, follows: 'room', kwhPerDay: { ...load.kwhPerDay, summer: warm } };
}
