import { formatQuantity } from '../../quantity/format-quantity';
import { type Check, said, told } from './contradiction';

export const lifeWithoutSecondWay: Check = (home) => {
  if (home.lifeSupport !== 'yes' || !said(home, 'second-source', 'none')) return null;
  return {
    id: 'life-without-second-way',
    asks: 'What keeps the person safe when every source in the house fails? Agree on it with the clinician and the supplier.',
    answers: ['Somebody depends on a powered device.', 'There is no second way yet.'],
    questions: ['medical-devices', 'second-source'],
  };
};

export const nobodyForGenerator: Check = (home) => {
  if (!said(home, 'operators', 'none') || !said(home, 'own-sources', 'engine-portable'))
    return null;
  return {
    id: 'nobody-for-engine',
    asks: 'Who would move, start and refuel the generator? Without somebody it does not count.',
    answers: [
      'Nobody here can lift, start and refuel a generator.',
      'There is a portable generator.',
    ],
    questions: ['operators', 'own-sources'],
  };
};

/** Below this, no route that carries a whole house can be had. Our judgement from the table of costs. */
const SMALL_BUDGET_USD = 1000;

export const normalLifeSmallBudget: Check = (home) => {
  const [now, later] = [told(home, 'budget-now'), told(home, 'budget-later')];
  if (!said(home, 'goal-scope', 'normal') || now === null || later === null) return null;
  const most = now + later;
  if (most >= SMALL_BUDGET_USD) return null;
  return {
    id: 'normal-life-small-budget',
    asks: 'Which matters more: almost everything running, or the cost? A few things that count can be kept for little.',
    answers: [
      'Almost everything should go on as on any other day.',
      `At most ${formatQuantity(most, '$')} can be spent.`,
    ],
    questions: ['goal-scope', 'budget-later'],
  };
};
