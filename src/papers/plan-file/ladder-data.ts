import { readingOf } from '../../plan/ladder/ladder-reading';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { round } from './figure-data';
import { namedLoads } from './named-load';
import type { PlanData } from './plan-schema';

/** The order in which things go off, each rung by what is read on the device. */
export function ladderData(plan: Plan, words: Words): PlanData['ladder'] {
  return plan.ladder.map((step) => ({
    ...levelData(plan, step.atPercent),
    switchOff: namedLoads(words, plan.home, step.switchOff),
    lessens: namedLoads(words, plan.home, step.lessens),
    savesWatts: round(step.savesWatts),
    gainsHours: orNot(step.gainsHours),
    carefulGainsHours: orNot(step.carefulGainsHours),
    whyCode: step.why.code,
    why: words.household.ladder.why(step.why, (id) => words.loadName(plan.home, id)),
  }));
}

const orNot = (hours: number | null) => (hours === null ? 'not counted' : round(hours));

/** "From the start" is 100; a rung on piped gas has no level, and one on fuel has gallons beside its share. */
function levelData(plan: Plan, atPercent: number) {
  if (atPercent === 100) return { atPercent, atGallons: null };
  const reading = readingOf(plan, atPercent);
  return {
    atPercent: reading.of === 'strain' ? null : atPercent,
    atGallons: 'gallons' in reading ? reading.gallons : null,
  };
}
