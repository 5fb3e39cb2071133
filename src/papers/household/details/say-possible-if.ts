import type { PossibleIf } from '../../../advice/possible-if';
import type { Plan } from '../../../plan/plan';
import { sayRule } from '../../../words/rule-sentences';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { sharingCautions } from './possible-if-groups';
import { carried, howLong } from './say-routes';

/**
 * Routes that something would have to be true for, every line of them marked "if". Those that share what can kill stand in one paragraph,
 * which ends in all of it, each caution once.
 */
export function sayPossibleIf({ possibleIf }: Plan, words: Words): string[] {
  const say = words.household.possibleIf;
  const [first] = possibleIf;
  if (first === undefined) return [];
  return [
    `## ${say.title}`,
    say.nothingToBuy(first.years),
    ...sharingCautions(possibleIf).map((group) => bullets(paragraph(group, words))),
  ];
}

function paragraph(group: readonly PossibleIf[], words: Words): string[] {
  const cautions = new Map(group.flatMap((one) => one.cautions.map((found) => [found.id, found])));
  return [
    ...group.flatMap((one) => routesIf(one, words)),
    ...[...cautions.values()].map((one) =>
      words.household.possibleIf.canKill(sayRule(words.rules, one)),
    ),
  ];
}

function routesIf({ conditions, routes, counts }: PossibleIf, words: Words): string[] {
  const say = words.household.possibleIf;
  return [
    say.conditions(
      conditions.map(({ code }) => code),
      conditions.map(({ settles }) => settles),
    ),
    ...routes.map((route) => {
      const own = counts[route.kind];
      return say.route(route, carried(own, words), howLong(route, own, words));
    }),
  ];
}
