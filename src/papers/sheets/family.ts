import type { Home } from '../../home/home';
import type { LoadId } from '../../home/load-id';
import { loadName } from '../../home/load-names';
import { lastingToPrint } from '../../plan/on-the-day/lasting-to-print';
import type { Plan } from '../../plan/plan';
import { formatQuantity, formatRange } from '../../quantity/format-quantity';
import type { Route } from '../../routes/route';
import type { Words } from '../../words/words';
import { type Block, type Fact, section } from '../document/block';
import { dangerBlocks, draftBlocks } from './danger-blocks';
import type { Sheet } from './sheet';

const FIND_OUT = 3;

/** The sheet for the household itself: the job, the purchase, what it brings and does not, and who does what next. */
export function familySheet(plan: Plan, words: Words): Sheet {
  const say = (text: string): Block => ({ sort: 'say', text });
  return {
    id: 'family',
    title: words.sheets.family.title,
    purpose: words.sheets.family.purpose,
    blocks: [
      ...dangerBlocks(plan, words),
      ...draftBlocks(plan, words.sheets.shared.draftLine),
      say(`${words.sheets.shared.asOf(plan.asOf)} ${words.sheets.shared.notADesign}`),
      { sort: 'facts', items: facts(plan, words) },
      ...section(words.sheets.family.steps, {
        sort: 'boxes',
        items: plan.nextSteps.map((step) => `${words.firstSentence(step.what)} (${step.who})`),
      }),
      ...section(words.sheets.family.findOut, {
        sort: 'bullets',
        items: plan.toFindOut.slice(0, FIND_OUT).map((one) => `${one.says}: ${one.how}`),
      }),
    ],
  };
}

/** What was decided, each under its name; a name without anything under it is left out. */
function facts(plan: Plan, words: Words): Fact[] {
  const { advice, home, lifeFirst } = plan;
  const { route } = advice;
  const missed = route.leavesOut.filter(({ must }) => must).map(({ load }) => load);
  const its = words.sheets.family;
  const all: [string, readonly string[]][] = [
    [its.job, [plan.job[0]!]],
    [its.first, lifeFirst?.told ? words.lifeFirst(lifeFirst) : []],
    [lifeFirst?.told ? its.bridge : its.buy, [bought(route, words), ...madeOf(route, words)]],
    [its.why, [advice.because]],
    [its.long, lasts(plan, words)],
    [its.runs, named(home, route.carries, words)],
    [its.runsNot, named(home, missed, words)],
    ...advice.beside
      .slice(0, 2)
      .map((one): [string, string[]] => [its.beside, [other(one, words)]]),
  ];
  return all
    .filter(([, says]) => says.length > 0)
    .map(([name, says]) => ({ name, says: says.join(' ') }));
}

function madeOf({ parts }: Route, words: Words): string[] {
  return parts.length === 0
    ? []
    : [`${words.sentenceCase(words.listOf(parts.map((part) => words.inSentence(part.name))))}.`];
}

function named(home: Home, ids: readonly LoadId[], words: Words): string[] {
  return ids.length === 0
    ? []
    : [
        `${words.sentenceCase(words.listOf(ids.map((id) => words.inSentence(loadName(home, id)))))}.`,
      ];
}

function bought(route: Route, words: Words): string {
  const { low, value, high } = route.costUsd;
  if (high === 0) return words.sheets.family.buyNothing(words.inSentence(route.title));
  return words.sheets.family.price(
    route.title,
    formatQuantity(value, '$'),
    formatRange(low, value, high, '$').replace(/^[^(]*\(|\)$/g, ''),
  );
}

function lasts(plan: Plan, words: Words): string[] {
  const its = words.sheets.family;
  if (plan.advice.route.carries.length === 0) return [its.noPower];
  const span = (h: number) => formatQuantity(Math.round(h), 'h');
  const lasting = lastingToPrint(plan);
  if (lasting.length === 0) return [its.gas];
  return [
    ...lasting.map(({ likelyHours, carefulHours, storedGallons }) =>
      storedGallons === null
        ? its.likely(span(likelyHours), span(carefulHours))
        : its.stored(formatQuantity(storedGallons, 'gal'), span(likelyHours), span(carefulHours)),
    ),
    its.asked(formatQuantity(plan.home.goalHours.value, 'h')),
  ];
}

function other(route: Route, words: Words): string {
  const { hours } = route.lasting;
  const lasting =
    route.carries.length === 0
      ? words.sheets.family.otherNone
      : hours === null
        ? words.sheets.family.otherGas
        : words.sheets.family.otherHours(formatQuantity(Math.round(hours.value), 'h'));
  return words.sheets.family.other(route.title, formatQuantity(route.costUsd.value, '$'), lasting);
}
