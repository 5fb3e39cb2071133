import type { Plan } from '../../../plan/plan';
import { sayContradiction } from '../contradictions/say-contradiction';
import { inSentence } from '../list-of';
import { sayWhyNow } from '../say-why-now';
import { sayAssumption } from '../sureness/say-assumption';

/** Answers that do not fit together, that are worth finding out, and what was taken instead. */
export const openAnswers = {
  settleTitle: 'Settle these first: two answers do not fit together',
  settle(found: Plan['electrical']['toSettle'][number]): string {
    const { answers, asks } = sayContradiction(found);
    return `${answers[0]} But: ${answers[1]} ${asks}`;
  },
  /** Of equipment this plan does not buy. */
  settleIfEver: (found: Plan['settleIfEver'][number]): string =>
    `Worth settling if you ever want ${ifEver[found.id] ?? 'more than this plan buys'}. ${openAnswers.settle(found)}`,
  findOutTitle: 'Worth finding out',
  /** What several answers decide alike is said once, behind the last of them. */
  findOut: (all: Plan['toFindOut']): string[] =>
    together(all, ({ decides }) => (decides === null ? null : sayWhyNow(decides))).map(
      ([why, group]) => {
        const [first, ...others] = group;
        if (why === null || others.length === 0)
          return `${named(first!)}.${why === null ? '' : ` ${why}`} ${first!.how}`;
        return `${group.map((one) => `${named(one)}. ${one.how}`).join(' ')} Each of these: ${inSentence(why)}`;
      },
    ),
  onlyToSettle:
    'What stands under "Settle these first". Beyond that, nothing that would change this plan much.',
  nothingToFindOut: 'Nothing that would change this plan much.',
  assumedTitle: 'What we assumed',
  /** Those taken for one reason stand together, with the reason once. */
  assumed: (all: Plan['assumptions']): string[] =>
    together(all.map(sayAssumption), ({ because }) => because).map(([because, group]) => {
      const what = group.map(({ says, assumed }) => `${says}: ${assumed}`).join('; ');
      return `${what}. ${because}${/[.!?]$/.test(because!) ? '' : '.'}`;
    }),
  nothingAssumed: 'Nothing: every question that applies was answered.',
};

const ifEver: Partial<Readonly<Record<Plan['settleIfEver'][number]['id'], string>>> = {
  'battery-below-flood': 'a battery fixed to the house',
  'roof-over-home': 'solar panels on the roof',
};

const named = ({ says, safety }: Plan['toFindOut'][number]) =>
  `${says}${safety ? ' (a safety answer: advice is held back until it is known)' : ''}`;

/** Those that one thing is said of, each group where its first stands; what nothing is said of stands alone. */
function together<T>(all: readonly T[], sayOf: (one: T) => string | null): [string | null, T[]][] {
  const groups: [string | null, T[]][] = [];
  for (const one of all) {
    const said = sayOf(one);
    const same = said === null ? undefined : groups.find(([other]) => other === said);
    if (same === undefined) groups.push([said, [one]]);
    else same[1].push(one);
  }
  return groups;
}
