import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import { formula, timesFigure } from '../../quantity/figure-arithmetic';
import type { HouseholdLoadId } from '../../tables/household-loads';
import type { Load } from '../home';
import { tonsFromArea } from './compressor';
import { asFigure, type LoadContext } from './context';
import { hasHotTub } from './hot-tub';
import { rankOf } from './load-keys';
import { makeLoad } from './make-load';

/** Big and occasional loads. Those no backup should carry are marked off in an outage. */
export function big(context: LoadContext): Load[] {
  const { facts } = context;
  const told = facts.choices('big-loads').filter((id) => id !== 'hot-tub');
  const ids = hasHotTub(facts) ? [...told, 'hot-tub' as const] : told;
  return ids.flatMap((id) => makers[id]?.(context) ?? []);
}

const restsOn: readonly QuestionId[] = ['big-loads'];
const plain = (row: HouseholdLoadId) => (): Load => makeLoad(row, { rank: 'wait', restsOn });

/** What each choice brings: a choice without a line here does not compile. */
const makers: Readonly<Record<ChoiceId<'big-loads'>, ((context: LoadContext) => Load) | null>> = {
  none: null,
  'ev-charger': carCharger,
  'electric-dryer': () => makeLoad('electric-dryer', { rank: 'wait', offInOutage: true, restsOn }),
  'hot-tub': () =>
    makeLoad('hot-tub', {
      rank: 'wait',
      offInOutage: true,
      restsOn: [...restsOn, 'freeze-risk'],
    }),
  'pool-pump': ({ facts }) =>
    makeLoad('pool-pump', { rank: rankOf(facts, ['pool']), offInOutage: true, restsOn }),
  washer: plain('washer'),
  dishwasher: plain('dishwasher'),
  dehumidifier: plain('dehumidifier'),
  'shop-tools': () => makeLoad('shop-tools', { rank: 'wait', offInOutage: true, restsOn }),
  aquarium: ({ facts }) => makeLoad('aquarium', { rank: rankOf(facts, ['aquarium']), restsOn }),
  'radon-fan': ({ facts }) =>
    makeLoad('radon-fan', { rank: rankOf(facts, ['radon-fan']), restsOn }),
  'second-cooling': (context) =>
    makeLoad('central-ac', {
      id: 'second-ac',
      called: { code: 'second-ac' },
      rank: 'wait',
      count: tonsFromArea(context),
      offInOutage: true,
      restsOn,
    }),
};

/** A charger may draw 80 % of its breaker for hours (NEC 625.42 with 210.20): W = breaker A x 0.8 x 240 V. */
function carCharger(context: LoadContext): Load {
  const breaker = asFigure(context, 'ev-breaker', 'A', true);
  const runningWatts =
    breaker === null
      ? undefined
      : timesFigure(breaker, 0.8 * 240, {
          unit: 'W',
          name: 'car-charger-power',
          source: formula('charger-breaker', [breaker]),
        });
  return makeLoad('ev-charger-240', {
    rank: 'wait',
    runningWatts,
    offInOutage: true,
    restsOn: [...restsOn, 'ev-breaker'],
  });
}
