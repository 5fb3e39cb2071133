import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';

/** How long the health devices are covered when all else is off; empty where none was named. */
export function sayHealthFirst({ healthFirst, home, advice }: Plan, words: Words): string[] {
  if (healthFirst === null || advice.route.carries.length === 0) return [];
  const say = words.household.healthFirst;
  const { carried, missed, covered } = healthFirst;
  const left = missed.length > 0 ? say.missed(words.loadNames(home, missed)) : '';
  if (covered === null) return left === '' ? [] : [say.onlyMissed(left)];
  return [`${say.covered(words.loadNames(home, carried), covered, home.goalHours.value)}${left}`];
}

/** The same in one short sentence for the first page, with a space before it. */
export function sayDevicesAlone({ healthFirst, home, advice }: Plan, words: Words): string {
  if (healthFirst === null || advice.route.carries.length === 0) return '';
  const { covered, carried } = healthFirst;
  const say = words.household.healthFirst;
  return covered === null ? say.carriesNone : say.alone(words.loadNames(home, carried), covered);
}
