import { hasFixedBattery } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { formatQuantity } from '../../quantity/format-quantity';
import type { Route } from '../../routes/route';
import { isWired } from '../electrical/route-traits';
import { plugsOnly } from '../electrician-points';
import { leavingForPeople } from '../leaving-point';
import { inSentence, listOf } from '../list-of';
import type { Plan } from '../plan';
import { bullets } from './bullets';
import { firstSentences } from './first-sentences';
import { frontCautions } from './front-cautions';
import { sayFigure } from './say-figure';

/** Steps shown on the front page. */
const STEPS = 3;

/** One page for whoever reads no more: every figure on it stands in the details too. */
export function frontPage(plan: Plan): string[] {
  return [
    `# Backup power plan: ${plan.name}`,
    `As of ${plan.asOf}. A planning aid, not an electrical design: a licensed electrician, the building department and the local code decide.`,
    ...draft(plan),
    bullets([
      `The job: ${plan.job[0]}`,
      buy(plan),
      lasts(plan),
      notCarried(plan),
      ...leave(plan),
      call(plan),
    ]),
    'What can hurt here most:',
    bullets(frontCautions(plan).map((one) => firstSentences(one.says))),
    'First steps:',
    bullets(
      plan.nextSteps.slice(0, STEPS).map((step) => `${firstSentences(step.what)} (${step.who})`),
    ),
  ];
}

/** What keeps it a draft, the open answers only counted. */
function draft({ state, draftBecause }: Plan): string[] {
  if (state !== 'draft') return [];
  const short = draftBecause.map((why) => {
    const open = why.split('still open: ')[1]?.split('; ').length;
    return open === undefined
      ? why
      : `${open} ${open === 1 ? 'answer is' : 'answers are'} still open`;
  });
  return [`DRAFT, not for buying from: ${short.join('; ')}.`];
}

function buy({ advice: { route }, addOns }: Plan): string {
  const made = route.parts.map((part) => inSentence(part.name)).join('; ');
  const installed = isWired(route) ? ' installed' : '';
  const beside = addOns
    .map((one) => `${inSentence(one.name)}, ${withoutYear(one.cost)}`)
    .join('; ');
  const also = beside === '' ? '' : ` Worth having beside it: ${beside}.`;
  return `What to buy: ${inSentence(route.title)}, ${sayFigure(route.costUsd)}${installed}: ${made}.${also}`;
}

/** The year of a price stands in the details. */
const withoutYear = (cost: string) => cost.replace(/, prices of .*$/, '');

function lasts({ advice: { route }, home, fuelToStore }: Plan): string {
  const { hours, reachesGoal, says } = route.lasting;
  const goal = formatQuantity(home.goalHours.value, 'h');
  const asked = reachesGoal
    ? `You asked for ${goal}.`
    : `It does not reach the ${goal} you asked for.`;
  if (hours === null || route.carries.length === 0) return `How long: ${says}`;
  const likely = formatQuantity(Math.round(hours.value), 'h');
  const bad = hours.low < 0.5 ? 'none at all' : formatQuantity(Math.round(hours.low), 'h');
  const then = fuelToStore?.thenHours ?? null;
  const more =
    then === null || then <= hours.value
      ? ''
      : ` With the fuel still to store: about ${formatQuantity(Math.round(then), 'h')}.`;
  return `How long: about ${likely}; in a bad case ${bad}. ${asked}${more}`;
}

function notCarried({ advice: { route }, routes, willNotDo }: Plan): string {
  if (route.carries.length === 0) return 'What it does not carry: anything; it gives no power.';
  const missed = [...new Set(route.leavesOut.filter((l) => l.must).map((l) => l.name))];
  const wired = willNotDo.some((line) => line.startsWith('It feeds nothing that is wired in'));
  const must =
    missed.length > 0
      ? `${listOf(missed.map(inSentence))}, which must keep running`
      : 'nothing that must keep running is left out';
  const all = missed.length > 0 ? carriesAll(routes) : null;
  const other =
    all === null
      ? ''
      : ` Cheapest that carries it too: ${inSentence(all.title)}, about ${formatQuantity(all.costUsd.value, '$')}.`;
  return `What it does not carry: ${must}${wired ? '; and nothing that is wired in' : ''}.${other}`;
}

/** The cheapest route that carries everything that must run, for however long. */
function carriesAll(routes: readonly Route[]): Route | null {
  const all = routes.filter(
    ({ verdict, carries, leavesOut }) =>
      verdict !== 'cannot' && carries.length > 0 && leavesOut.every((load) => !load.must),
  );
  return [...all].sort((a, b) => a.costUsd.value - b.costUsd.value)[0] ?? null;
}

/** For a life-support device its own line; else that for a person at risk, if one is here. */
function leave({ home }: Plan): string[] {
  const [first] = leavingForPeople(home);
  if (first === undefined) return [];
  return [first.startsWith('Life support') ? first : `When to leave. ${first}`];
}

/** Whom to call before anything is connected. */
function call({ advice: { route }, electrician }: Plan): string {
  const needed = isWired(route) || electrician[0] === plugsOnly;
  const permit = route.parts.some((part) => part.equipmentClass === 'permit');
  const others = othersFor(route);
  return `Whom to call: ${needed ? 'a licensed electrician, yes' : 'no electrician for this route'}${
    permit ? '; the building department, for permit and inspection' : ''
  }${others.length > 0 ? `; ${others.join('; ')}` : ''}.`;
}

function othersFor(route: Route): string[] {
  const gas = route.ifs.some((one) => one.startsWith('a gas fitter'));
  const grid = hasFixedBattery(traitsOf[route.kind]);
  return [
    ...(gas ? ['a gas fitter, for the fuel'] : []),
    ...(grid ? ['the power company, for its approval'] : []),
  ];
}
