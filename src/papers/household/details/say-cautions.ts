import { cautionGroups } from '../../../plan/caution-groups';
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
 * answers, then what belongs to the other season, then, question by question, those for want of one.
 */
export function sayCautions(plan: Plan, words: Words): string[] {
  const say = words.household.cautions;
  const { wrong, known, otherSeason, open } = cautionGroups(plan);
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
    ...forWantOfAnswers(plan, open, words),
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

/** One block a question: what can kill in full, the rest by their first sentences; questions without a deadly one in a line. */
function forWantOfAnswers(plan: Plan, open: readonly Finding[], words: Words): string[] {
  const say = words.household.cautions;
  const blocks = [...byQuestion(plan, open, words)];
  if (blocks.length === 0) return [];
  const grave = blocks.filter(([, cautions]) => cautions.some(kills));
  const lesser = blocks.filter(([, cautions]) => !cautions.some(kills));
  return [
    `### ${say.openTitle}`,
    say.openMeans,
    ...grave.flatMap(([asks, cautions]) => [`${asks}:`, bullets(merged(cautions, words))]),
    ...(lesser.length > 0
      ? [
          bullets(
            lesser.map(([asks, all]) =>
              say.underQuestion(
                asks,
                all.map((one) => inShort(one, words)),
              ),
            ),
          ),
        ]
      : []),
  ];
}

const inShort = (caution: Finding, words: Words) =>
  words.firstSentence(sayRule(words.rules, caution));
const kills = ({ severity }: Finding) => severity === 5;

function byQuestion(
  { assumptions }: Plan,
  cautions: readonly Finding[],
  words: Words,
): Map<string, Finding[]> {
  const blocks = new Map<string, Finding[]>();
  for (const caution of cautions) {
    const open = assumptions.find((one) => one.question === caution.asks);
    const asks =
      open === undefined
        ? words.reason(caution.because).replace(/\.$/, '')
        : words.household.cautions.notAnswered(open.says);
    blocks.set(asks, [...(blocks.get(asks) ?? []), caution]);
  }
  return blocks;
}

function merged(cautions: readonly Finding[], words: Words): string[] {
  const grave = cautions.filter(kills).map((one) => sayCaution(one, words));
  const rest = cautions.filter((one) => !kills(one)).map((one) => inShort(one, words));
  return rest.length > 0 ? [...grave, words.household.cautions.also(rest)] : grave;
}
