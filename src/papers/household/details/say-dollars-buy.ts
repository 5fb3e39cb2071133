import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

/** As on the picture, from the cheapest. */
const LETTERS = 'ABCDEFGH';

/** The list of what nothing beats, from $0 up, with what each line is made of. */
export function sayDollarsBuy(plan: Plan, words: Words): string[] {
  const { list, advised, reason, careful } = plan.advice;
  if (list.length < 2) return [];
  const say = words.household.dollarsBuy;
  const { goalHours, season } = plan.rideThrough;
  const lines = list.map((line, i) =>
    say.line({
      line,
      letter: LETTERS[i]!,
      goalHours,
      advised: i === advised,
      budgetUsd: reason.budgetUsd,
      laterUsd: reason.laterUsd,
    }),
  );
  const parts = list.flatMap(({ route, usd }, i) =>
    route === null
      ? []
      : [
          say.parts(
            LETTERS[i]!,
            route.parts.map((part) =>
              words.household.advised.part(words.part(part.called), part.costUsd),
            ),
            usd - route.costUsd.value,
          ),
        ],
  );
  return [
    `## ${say.title}`,
    say.intro(goalHours, season, careful),
    bullets(lines),
    ...(list.some(({ way }) => way === 'thrifty') ? [say.thriftily] : []),
    say.madeOf,
    bullets(parts),
  ];
}
