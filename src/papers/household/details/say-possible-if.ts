import type { PossibleIf } from '../../../advice/possible-if';
import type { Plan } from '../../../plan/plan';
import { sayRule } from '../../../words/rule-sentences';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { carried, howLong } from './say-routes';

/** Routes that something would have to be true for: one block a condition, every line of it marked "if", deadly cautions with it. */
export function sayPossibleIf({ possibleIf }: Plan, words: Words): string[] {
  const say = words.household.possibleIf;
  const [first] = possibleIf;
  if (first === undefined) return [];
  return [
    `## ${say.title}`,
    say.nothingToBuy(first.years),
    ...possibleIf.map((one) => bullets(block(one, words))),
  ];
}

function block({ conditions, routes, counts, cautions }: PossibleIf, words: Words): string[] {
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
    ...cautions.map((one) => say.canKill(sayRule(words.rules, one))),
  ];
}
