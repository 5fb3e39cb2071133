import { type Check, said, told } from './contradiction';

export const lifeWithoutSecondWay: Check = (home) => {
  if (home.lifeSupport !== 'yes' || !said(home, 'second-source', 'none')) return null;
  return {
    id: 'life-without-second-way',
    questions: ['medical-devices', 'second-source'],
  };
};

export const nobodyForGenerator: Check = (home) => {
  if (!said(home, 'operators', 'none') || !said(home, 'own-sources', 'engine-portable'))
    return null;
  return {
    id: 'nobody-for-engine',
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
    dollars: most,
    questions: ['goal-scope', 'budget-later'],
  };
};
