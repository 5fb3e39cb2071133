import { cautionGroups, type ToSettle } from '../../../plan/cautions/caution-groups';
import type { Plan } from '../../../plan/plan';
import type { Finding } from '../../../rules/rule';
import { sayRule } from '../../../words/rule-sentences';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

type Title = 'canKill' | 'canInjure' | 'canFail';

const groups: readonly { title: Title; from: number; to: number }[] = [
  { title: 'canKill', from: 5, to: 5 },
  { title: 'canInjure', from: 4, to: 4 },
  { title: 'canFail', from: 1, to: 3 },
];

/**
 * The cautions: first what this home told that is wrong as it is, however grave the rest; then what else follows from the
 * answers, then what belongs to the other season, then what holds whether told or not, and each open question once.
 */
export function sayCautions(plan: Plan, words: Words): string[] {
  const say = words.household.cautions;
  const { wrong, known, otherSeason, unasked, settle, unsettled } = cautionGroups(plan);
  const list = (title: string, all: readonly Finding[]) =>
    all.length > 0 ? [title, bullets(all.map((one) => sayCaution(one, words)))] : [];
  const other = plan.home.goalSeasons.includes('winter') ? 'summer' : 'winter';
  return [
    `## ${say.title}`,
    ...list(say.wrongAsItIs, wrong),
    ...groups.flatMap(({ title, from, to }) =>
      list(
        say[title],
        known.filter((c) => c.severity >= from && c.severity <= to),
      ),
    ),
    ...list(say.otherSeason(other), otherSeason),
    ...list(say.unasked, unasked),
    ...toSettle(settle, words),
    ...forWantOfOthers(unsettled, words),
  ];
}

/** Grave ones in full; of the lesser ones the first sentence, for the plan file has the rest. */
function sayCaution(caution: Finding, words: Words): string {
  const all = sayRule(words.rules, caution);
  const says = caution.severity <= 3 ? words.firstSentence(all) : all;
  const say = words.household.cautions;
  const figures = (caution.figures ?? []).map(say.figure).join('');
  return `${says}${figures} ${say.who(caution.who)}`;
}

/** Each open question once, with the gravest of what hangs on it in short. */
function toSettle(settle: readonly ToSettle[], words: Words): string[] {
  const say = words.household.cautions;
  if (settle.length === 0) return [];
  return [
    `### ${say.settleTitle}`,
    say.settleMeans,
    bullets(
      settle.map(({ says, ask, gravest }) => say.toSettle(says, ask, inShort(gravest, words))),
    ),
  ];
}

/** Where no one question would settle it: what can kill in full, the rest by their first sentences, by what is missing. */
function forWantOfOthers(cautions: readonly Finding[], words: Words): string[] {
  const blocks = new Map<string, Finding[]>();
  for (const caution of cautions) {
    const because = words.reason(caution.because).replace(/\.$/, '');
    blocks.set(because, [...(blocks.get(because) ?? []), caution]);
  }
  return [...blocks].flatMap(([because, all]) => [`${because}:`, bullets(merged(all, words))]);
}

const inShort = (caution: Finding, words: Words) =>
  words.firstSentence(sayRule(words.rules, caution));
const kills = ({ severity }: Finding) => severity === 5;

function merged(cautions: readonly Finding[], words: Words): string[] {
  const grave = cautions.filter(kills).map((one) => sayCaution(one, words));
  const rest = cautions.filter((one) => !kills(one)).map((one) => inShort(one, words));
  return rest.length > 0 ? [...grave, words.household.cautions.also(rest)] : grave;
}
