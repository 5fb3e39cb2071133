import { changesBetween } from '../../plan/changes/changes-between';
import { factsOfPlan } from '../../plan/changes/facts-of';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import type { Block } from '../document/block';

/** The plans of two homes thing by thing, by the same facts as any two plans are compared by; where both say the same, once. */
export function plansBeside(one: Plan, other: Plan, words: Words): Block[] {
  const say = words.quotes.twoPlans;
  const { rows } = words.changes(changesBetween(factsOfPlan(one), factsOfPlan(other)));
  const [jobs, states] = [
    [one, other].map(({ job, home }) => words.job(job, home)[0]!),
    [one, other].map(({ state }) => say.state(state === 'draft')),
  ];
  return [
    { name: say.theJob, before: jobs[0]!, after: jobs[1]! },
    ...rows,
    { name: say.howSure, before: states[0]!, after: states[1]! },
  ].flatMap(({ name, before, after }): Block[] => [
    { kind: 'heading', text: name },
    {
      kind: 'bullets',
      items:
        before === after
          ? [say.same(before)]
          : [say.each(one.name, before), say.each(other.name, after)],
    },
  ]);
}
