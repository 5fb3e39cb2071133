import { frontLines } from '../../../src/papers/household/front/front-page';
import { explainable } from '../../../src/plan/explain/explainable';
import type { Plan } from '../../../src/plan/plan';
import type { Figure } from '../../../src/quantity/figure';
import { formatQuantity } from '../../../src/quantity/format-quantity';
import { english } from '../../../src/words/en';

/** Numbers on the first page that are no figure of the plan. */
const noFigures: readonly [why: string, what: RegExp][] = [
  ['limits of a room, the same in every plan; their source stands at the rule', /\d+ °F/g],
  ['a distance of a rule', /\d+ feet/g],
  ['hours of the clock', /from \d+ to \d+ [ap]m|\d+ to \d+ [ap]m/g],
  ['what the odds are counted of', /of 100 (?:such )?outages|9 in 10 such outages/gi],
  ['an answer', /the \$[\d,]+ you told us(?: \([^)]*\))?/g],
  ['a voltage in a name', /\d+-volt/g],
  ['odds at their ends', /(?:fewer|more) than \d+/g],
  ['the size of a tank on which a gauge is read', /% on a tank of [\d,]+ gal/g],
];

const NUMBER = String.raw`\d(?:[\d,]*\d)?(?:\.\d+)?`;
const QUANTITY = new RegExp(
  String.raw`\$${NUMBER}|${NUMBER} days(?: \d+ h)?|${NUMBER} (?:h|gal|kWh|kW|W)\b|${NUMBER} ?(?=%|$)`,
  'g',
);

function quantities(line: string): string[] {
  const left = noFigures.reduce((text, [, what]) => text.replaceAll(what, ''), line);
  return left.match(QUANTITY) ?? [];
}

/** As a value is printed on the first page: hours whole, sizes in either unit. */
function printed({ value, low, high, unit }: Figure): string[] {
  return [value, low, high].flatMap((one) => [
    formatQuantity(one, unit).replace('%', ''),
    ...(unit === 'h' ? [formatQuantity(Math.round(one), 'h')] : []),
    ...(unit === 'W' ? [formatQuantity(one / 1000, 'kW')] : []),
  ]);
}

/** Quantities on the first page, and those among them that no figure to be explained comes to. */
export function onFirstPage(plan: Plan): { shown: string[]; unexplained: string[] } {
  const known = new Set(explainable(plan).flatMap(({ figure }) => printed(figure)));
  const shown = frontLines(plan, english).flatMap(quantities);
  return { shown, unexplained: shown.filter((one) => !known.has(one.trim())) };
}
