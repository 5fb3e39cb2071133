import type { Plan } from '../../plan/plan';
import { linesToCompare, type TwoPlans } from '../../plan/quote/two-plans';
import type { Words } from '../../words/words';
import type { Block } from '../document/block';

/** Two plans line by line; where both say the same, once. */
export function plansBeside(one: Plan, other: Plan, words: Words): Block[] {
  const say = words.quotes.twoPlans;
  const saying = (job: string, twoPlans: TwoPlans) => [
    job,
    say.buy(twoPlans.buy),
    say.lasts(twoPlans.lasts),
    say.carries(twoPlans.carries),
    say.odds(twoPlans.odds === null ? null : words.share(twoPlans.odds)),
    say.state(twoPlans.draft),
  ];
  const [mine, theirs] = [one, other].map((plan) =>
    saying(words.job(plan.job, plan.home)[0]!, linesToCompare(plan)),
  );
  return mine!.flatMap((line, i): Block[] => [
    { kind: 'heading', text: say.headings[i]! },
    {
      kind: 'bullets',
      items:
        line === theirs![i]
          ? [say.same(line)]
          : [say.each(one.name, line), say.each(other.name, theirs![i]!)],
    },
  ]);
}
