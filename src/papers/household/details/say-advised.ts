import { loadNames } from '../../../home/load-names';
import type { Plan } from '../../../plan/plan';
import { onceStored } from '../../../routes/once-stored';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { sayFuelForGoal } from '../say-fuel-for-goal';
import { sayHealthFirst } from '../say-health-first';
import { highEndLines } from './say-electrical';

/** The route advised: why, what it carries and how long, what it is made of, what it hangs on. */
export function sayAdvised(plan: Plan, words: Words): string[] {
  const { route, because } = plan.advice;
  const stored = onceStored(plan.home, route);
  const parts = route.parts.map((p) => `${p.name}: ${words.figure(p.costUsd)}`);
  return [
    `## ${plan.lifeFirst?.told ? 'Beside that, only as a bridge' : 'The one advised'}: ${route.title.toLowerCase()}`,
    because,
    ...carriesLine(plan),
    route.lasting.says,
    ...(stored === null ? [] : [stored.route.lasting.says]),
    ...sayHealthFirst(plan, words),
    ...(route.fuel === null
      ? []
      : [`It burns ${words.figure(route.fuel.perDay)} of ${words.fuel(route.fuel.fuel)}.`]),
    ...sayFuelForGoal(plan, words),
    ...(plan.fuelToStore === null ? [] : [plan.fuelToStore.says]),
    `When the grid fails: ${words.gap(route.gap)}.`,
    ...highEndLines(plan, words),
    ...(parts.length > 0 ? ['What it is made of:', bullets(parts)] : []),
    ...addOns(plan),
    ...(route.ifs.length > 0 ? ['It works if:', bullets(route.ifs)] : []),
    ...(route.notes.length > 0 ? ['Good to know:', bullets(route.notes)] : []),
  ];
}

/** What must keep running and what is good to have, apart, so that the counts can be followed. */
function carriesLine({ advice: { route }, home, mustRun }: Plan): string[] {
  if (route.carries.length === 0) return [];
  const ids = new Set(mustRun.map((load) => load.id));
  const must = loadNames(
    home,
    route.carries.filter((id) => ids.has(id)),
  );
  const more = loadNames(
    home,
    route.carries.filter((id) => !ids.has(id)),
  );
  const of = must.length === ids.size ? `all ${ids.size}` : `${must.length} of the ${ids.size}`;
  const also = more.length > 0 ? ` Good to have, it also carries: ${more.join(', ')}.` : '';
  return [`It carries ${of} that must keep running: ${must.join(', ')}.${also}`];
}

function addOns(plan: Plan): string[] {
  if (plan.addOns.length === 0) return [];
  const line = (one: Plan['addOns'][number]) => `${one.name}: ${one.cost}; ${one.because}.`;
  return ['Worth having beside it, and in none of its sums:', bullets(plan.addOns.map(line))];
}
