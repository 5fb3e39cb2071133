import interview from '#compiled/questions.js';
import { planPapers } from '../../../src/commands/plan-papers';
import { showGlance } from '../../../src/commands/talk/show-draft';
import { sumWords } from '../../../src/faces/draft-words';
import { glanceWords } from '../../../src/faces/glance-words';
import type { Answers } from '../../../src/interview/answers';
import { figureList } from '../../../src/papers/explain/explain-text';
import { factsOfPlan } from '../../../src/plan/changes/facts-of';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import { explainable } from '../../../src/plan/explain/explainable';
import type { Plan } from '../../../src/plan/plan';
import { shown } from '../../../src/quantity/shown';
import { english } from '../../../src/words/en';
import { ASPECT_NAMES, sayAspect } from '../../../src/words/en/changes/say-facts';

const NUMBER = String.raw`\d(?:[\d,]*\d)?(?:\.\d+)?`;
const QUANTITY = new RegExp(
  String.raw`\$${NUMBER}|${NUMBER} days(?: \d+ h)?|${NUMBER} (?:h|gal|kWh|kW|W|kVA|VA|A)\b`,
  'g',
);

/** A quantity as printed, in the unit figures are kept in, and how much its last digit is worth. */
interface Printed {
  readonly value: number;
  readonly unit: string;
  readonly step: number;
}

function read(quantity: string): Printed {
  if (quantity.startsWith('$')) return { unit: '$', ...digits(quantity.slice(1)) };
  const days = /^([\d,]+) days(?: (\d+) h)?$/.exec(quantity);
  if (days !== null) {
    return { unit: 'h', value: 24 * Number(days[1]) + Number(days[2] ?? 0), step: 1 };
  }
  const [number, unit] = quantity.split(' ') as [string, string];
  const { value, step } = digits(number);
  // Never kWh: no figure is kept in Wh.
  const kilo = unit === 'kW' || unit === 'kVA' ? 1000 : 1;
  return { unit: unit.replace(/^k(?=W$|VA$)/, ''), value: kilo * value, step: kilo * step };
}

function digits(text: string): { value: number; step: number } {
  return {
    value: Number(text.replaceAll(',', '')),
    step: 10 ** -(text.split('.')[1]?.length ?? 0),
  };
}

const draftOf = draftMaker(interview);

/** What lies so near a figure may be another way of rounding it. */
const NEAR = 0.01;

/** Not the figure, though near it. */
const others: readonly [why: string, line: RegExp][] = [
  [
    'hours fed in full until something fails, in whole hours of the walk',
    /after (?:\d+ days )?\d+ h|stopped after/,
  ],
  ['what is left and used hour by hour', /^\|.*(?:kWh|gal)|^[\d.]+ (?:kWh|gal)$/],
  ['hours of outages to expect in a year', /hours? a year|[\d.]+ h a year|a year \(/],
  ['a size that is sold', /[Bb]attery, \d+ kWh/],
];

/** All that is said of a plan on papers and screens, line by line. */
function lines(plan: Plan, answers: Answers): string[] {
  const aspects = Object.keys(ASPECT_NAMES) as (keyof typeof ASPECT_NAMES)[];
  const facts = factsOfPlan(plan);
  const draft = draftOf(answers);
  return [
    ...planPapers(plan, 'home', english)
      .filter(({ file }) => /\.(?:md|html)$/.test(file))
      .flatMap(({ text }) => text.replace(/<[^>]+>/g, '\n').split('\n')),
    ...figureList(explainable(plan), { asked: () => null, words: english, columns: 1000 }),
    ...aspects.map((aspect) => sayAspect(facts, aspect)),
    ...sumWords(draft),
    ...glanceWords(showGlance(draft.glance)),
  ];
}

/** Quantities that are a figure of the plan, rounded otherwise than it is shown: "6.1 h" where 6.11 h is shown as 6 h. */
export function roundedOtherwise(plan: Plan, answers: Answers): string[] {
  const figures = explainable(plan).flatMap(({ id, figure }) =>
    (['low', 'value', 'high'] as const).map((end) => ({
      id,
      value: figure[end],
      unit: figure.unit.replace('/day', ''),
    })),
  );
  const known = new Set(figures.map(({ value, unit }) => shown(value, unit)));
  return lines(plan, answers)
    .filter((line) => others.every(([, what]) => !what.test(line)))
    .flatMap((line) => (line.match(QUANTITY) ?? []).map((quantity) => ({ quantity, line })))
    .filter(({ quantity }) => !known.has(quantity))
    .flatMap(({ quantity, line }) => {
      const { value, unit, step } = read(quantity);
      const near = figures.find((one) => {
        const off = Math.abs(one.value - value);
        return one.unit === unit && off > 1e-9 && off < step && off < NEAR * Math.abs(one.value);
      });
      return near === undefined
        ? []
        : [`${quantity} for ${near.id} ${shown(near.value, unit)}: ${line.slice(0, 160)}`];
    });
}
