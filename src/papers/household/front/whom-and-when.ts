import type { Home } from '../../../home/home';
import { harmfulSeason } from '../../../plan/cautions/harmful-season';
import { leavingForPeople } from '../../../plan/leaving-point';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';

/** For a life-support device its own line; else those for a person at risk, in the seasons the plan is for. */
export function leave(plan: Plan, words: Words): string[] {
  const forPeople = leaveForPeople(plan.home, words);
  return [
    ...(forPeople.length > 0 ? forPeople : leaveWhenItEnds(plan, words)),
    ...goWhenTold(plan.home, words),
  ];
}

/** Where nothing within the money reaches the goal, the end of what is bought is a time to leave, for anybody. */
function leaveWhenItEnds({ advice }: Plan, words: Words): string[] {
  if (advice.waysOn === null) return [];
  const line = advice.advised === null ? null : advice.list[advice.advised]!;
  const hours = line?.hours?.likely ?? null;
  return [words.household.waysOn.leaveWhenItEnds(hours === 0 ? null : hours)];
}

function leaveForPeople(home: Home, words: Words): string[] {
  const lines = leavingForPeople(home);
  const device = lines.find((line) => line.code === 'device');
  if (device !== undefined) return [words.leaving(device)];
  const now = lines.filter(({ code }) => code !== 'device' && harmfulSeason(home, code));
  return now.length > 0 ? [words.household.frontPage.leave(words.leavings(now))] : [];
}

/** Fire and water that were told leave no time to read on: the order comes first. */
function goWhenTold({ facts }: Home, words: Words): string[] {
  const told = facts.told('hazards') && facts.has('hazards', 'wildfire', 'flood', 'hurricane');
  return told ? [words.household.frontPage.goWhenTold] : [];
}

/** Whom to call before anything is connected. */
export function call({ electricianFor, toCall }: Plan, words: Words): string {
  return words.household.frontPage.call({ electrician: electricianFor, ...toCall });
}
