import { cautionGroups } from '../../../plan/caution-groups';
import type { Plan } from '../../../plan/plan';
import type { Finding } from '../../../rules/rule';
import { sayRule } from '../../../words/rule-sentences';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

const groups: readonly { title: string; from: number; to: number }[] = [
  { title: 'These can kill. Read them aloud once:', from: 5, to: 5 },
  { title: 'These can injure, burn or flood:', from: 4, to: 4 },
  {
    title: 'These keep the backup from working, or cost money (in full in the plan file):',
    from: 1,
    to: 3,
  },
];

/**
 * The cautions: first what this home told that is wrong as it is, however grave the rest; then what else follows from the
 * answers, then what belongs to the other season, then, question by question, those for want of one.
 */
export function sayCautions(plan: Plan, words: Words): string[] {
  const { wrong, known, otherSeason, open } = cautionGroups(plan);
  const list = (title: string, all: readonly Finding[]) =>
    all.length > 0 ? [title, bullets(all.map((one) => sayCaution(one, words)))] : [];
  const other = plan.home.goalSeasons.includes('winter') ? 'summer' : 'winter';
  return [
    '## Cautions',
    ...list('You told us of these. They are wrong as they are, whatever you buy:', wrong),
    ...groups.flatMap(({ title, from, to }) =>
      list(
        title,
        known.filter((c) => c.severity >= from && c.severity <= to),
      ),
    ),
    ...list(`For an outage in ${other}, though you asked for the other season:`, otherSeason),
    ...forWantOfAnswers(plan, open, words),
  ];
}

/** Grave ones in full; of the lesser ones the first sentence, for the plan file has the rest. */
function sayCaution(caution: Finding, words: Words): string {
  const all = sayRule(words.rules, caution);
  const says = caution.severity <= 3 ? words.firstSentence(all) : all;
  return `${says}${figuresOf(caution, words)} (Who: ${caution.who.join(', ')}.)`;
}

/** The figures of this home behind a caution: "Your well pump: 9,120 VA (...) at the start." */
function figuresOf({ figures = [] }: Finding, words: Words): string {
  const at = { start: 'at the start', running: 'while it runs' } as const;
  return figures
    .map((one) => ` Your ${words.inSentence(one.name)}: ${words.figure(one.figure)} ${at[one.at]}.`)
    .join('');
}

/** One block a question: what can kill in full, the rest by their first sentences; questions without a deadly one in a line. */
function forWantOfAnswers(plan: Plan, open: readonly Finding[], words: Words): string[] {
  const blocks = [...byQuestion(plan, open)];
  if (blocks.length === 0) return [];
  const grave = blocks.filter(([, cautions]) => cautions.some(kills));
  const lesser = blocks.filter(([, cautions]) => !cautions.some(kills));
  return [
    '### Because these are not answered yet',
    'An answer that is missing counts as the unsafe one. Answer it, and what does not belong to this home goes away.',
    ...grave.flatMap(([asks, cautions]) => [`${asks}:`, bullets(merged(cautions, words))]),
    ...(lesser.length > 0
      ? [
          bullets(
            lesser.map(
              ([asks, all]) => `${asks}: ${all.map((one) => inShort(one, words)).join(' ')}`,
            ),
          ),
        ]
      : []),
  ];
}

const inShort = (caution: Finding, words: Words) =>
  words.firstSentence(sayRule(words.rules, caution));
const kills = ({ severity }: Finding) => severity === 5;

function byQuestion({ assumptions }: Plan, cautions: readonly Finding[]): Map<string, Finding[]> {
  const blocks = new Map<string, Finding[]>();
  for (const caution of cautions) {
    const open = assumptions.find((one) => one.question === caution.asks);
    const asks =
      open === undefined ? caution.because.replace(/\.$/, '') : `${open.says}, not answered`;
    blocks.set(asks, [...(blocks.get(asks) ?? []), caution]);
  }
  return blocks;
}

function merged(cautions: readonly Finding[], words: Words): string[] {
  const grave = cautions.filter(kills).map((one) => sayCaution(one, words));
  const rest = cautions.filter((one) => !kills(one)).map((one) => inShort(one, words));
  return rest.length > 0 ? [...grave, `Also: ${rest.join(' ')}`] : grave;
}
