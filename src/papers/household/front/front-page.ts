import { gasHere } from '../../../home/gas-here';
import type { Home } from '../../../home/home';
import { hasFixedBattery, isSource, outletsOnly } from '../../../kinds/ask-traits';
import { traitsOf } from '../../../kinds/route-traits';
import { isWired } from '../../../plan/electrical/route-traits';
import { harmfulSeason } from '../../../plan/harmful-season';
import { GO_NOW, leavingForPeople } from '../../../plan/leaving-point';
import type { NextStep, StepId } from '../../../plan/next-steps';
import { nightWithoutHeat } from '../../../plan/night-without-heat';
import type { Plan } from '../../../plan/plan';
import { formatQuantity, formatRange } from '../../../quantity/format-quantity';
import { carriesAllMust, mustMissed } from '../../../routes/must-carried';
import { fuelToday, onceStored, sayOnceStored } from '../../../routes/once-stored';
import type { Route } from '../../../routes/route';
import { sayRule } from '../../../words/rule-sentences';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { sayAboveTold } from '../say-above-told';
import { sayFuelToKeep } from '../say-fuel-for-goal';
import { sayDevicesAlone } from '../say-health-first';
import { sayWhatYouHave } from '../say-what-you-have';
import { frontCautions } from './front-cautions';
import { danger } from './say-danger';
import { sayBothWays, sayThriftily } from './say-thriftily';

/** Steps shown on the front page. */
const STEPS = 3;

/** One page for whoever reads no more: every figure on it stands in the details too. */
export function frontPage(plan: Plan, words: Words): string[] {
  return [
    `# Backup power plan: ${plan.name}`,
    ...danger(plan, words),
    `As of ${plan.asOf}. A planning aid, not an electrical design: a licensed electrician, the building department and the local code decide.`,
    ...draft(plan),
    bullets(frontLines(plan, words)),
    'What can hurt here most:',
    bullets(frontCautions(plan).map((one) => words.firstSentences(sayRule(words.rules, one)))),
    'First steps:',
    bullets(firstSteps(plan).map((step) => `${words.firstSentences(step.what)} (${step.who})`)),
  ];
}

/** What was decided, in lines of a name and what stands under it. */
export function frontLines(plan: Plan, words: Words): string[] {
  return [
    `The job: ${plan.job[0]}`,
    ...lifeBefore(plan, words),
    ...comfort(plan, words),
    buy(plan, words),
    ...sayWhatYouHave(plan, words),
    lasts(plan, words),
    ...sayThriftily(plan, words),
    ...sayFuelToKeep(plan, words),
    notCarried(plan, words),
    ...leave(plan),
    call(plan),
  ];
}

/** Steps that begin the purchase: one of them stands on the front page of a plan to buy something. */
const purchase: readonly StepId[] = ['buy', 'quotes'];

/** The first steps, without those that stand above already. */
function firstSteps({ nextSteps, lifeFirst }: Plan): NextStep[] {
  const above: StepId[] = lifeFirst?.told ? ['agree-on-device', 'on-the-lists'] : [];
  const left = nextSteps.filter((step) => !above.includes(step.id));
  const first = left.slice(0, STEPS);
  const buy = left.find((step) => purchase.includes(step.id));
  return buy === undefined || first.includes(buy) ? first : [...first.slice(0, STEPS - 1), buy];
}

/** What keeps it a draft, the open answers only counted. */
function draft({ state, draftBecause }: Plan): string[] {
  if (state !== 'draft') return [];
  return [`DRAFT, not for buying from: ${draftBecause.map((why) => why.short).join('; ')}.`];
}

function buy({ advice: { route }, addOns, lifeFirst, home }: Plan, words: Words): string {
  const made = route.parts.map((part) => words.inSentence(part.name)).join('; ');
  const installed = isWired(route) ? ' installed' : '';
  const beside = addOns
    .map(
      (one) =>
        `${words.inSentence(one.name)}, ${formatRange(one.usdLow, one.usdLikely, one.usdHigh, '$')}`,
    )
    .join('; ');
  const also = beside === '' || lifeFirst?.told ? '' : ` Worth having beside it: ${beside}.`;
  const bridge = isSource(traitsOf[route.kind])
    ? 'Beside that, and only as a bridge'
    : 'Beside that';
  const head = lifeFirst?.told ? bridge : 'What to buy';
  if (route.parts.length > 0 && route.costUsd.high === 0 && !lifeFirst?.told) {
    return `What to buy: nothing. Use ${words.inSentence(route.title)}: ${made}.${also}`;
  }
  return `${head}: ${words.inSentence(route.title)}, ${words.figure(route.costUsd)}${sayAboveTold(home, route, words)}${installed}: ${made}.${also}`;
}

/** Where life hangs on a device: whom to call, its own battery and the second way come before any purchase. */
function lifeBefore({ lifeFirst }: Plan, words: Words): string[] {
  return lifeFirst?.told
    ? [`Before anything is bought: ${words.lifeFirst(lifeFirst).join(' ')}`]
    : [];
}

/** No heat or no cooling, where that harms, is said before what is bought. */
function comfort(
  { comfortLost: { heat, cool }, home, lifeFirst, advice }: Plan,
  words: Words,
): string[] {
  const night = nightWithoutHeat(home, advice.route);
  const names = (ids: readonly string[]) =>
    home.loads.filter((load) => ids.includes(load.id)).map((load) => words.inSentence(load.name));
  const because = (ids: readonly string[], building: string) =>
    names(ids).length > 0
      ? notRun(
          names(ids),
          ids.some((id) => onlyInOutage(home, id)),
          words,
        )
      : building;
  // Who leaves when the power fails waits for no thermometer.
  const wait = home.lifeSupport !== 'no' && lifeFirst?.leaveAtOnce === true;
  return [
    ...(heat.length > 0
      ? [
          `Expect no heat while the power is out: ${because(heat, 'the building heats your home, and its boiler needs power too')}.${wait ? '' : ' Live in one room, hang a thermometer in it, and leave before it stays below 60 °F.'}`,
        ]
      : []),
    ...(night === null ? [] : [night]),
    ...(cool.length > 0
      ? [
          `Expect no cooling while the power is out: ${because(cool, '')}. ${wait ? 'A' : 'Have a cool place to go to, and leave before a room stays above 90 °F; a'} fan alone does not protect above ${wait ? '90 °F' : 'that'}.`,
        ]
      : []),
  ];
}

/** A unit for one room that nobody may have is not "the" unit of this home. */
const notRun = (names: readonly string[], forOneRoom: boolean, words: Words) =>
  forOneRoom
    ? `this plan runs no ${words.listOf(names)}`
    : `this plan does not carry the ${words.listOf(names)}`;

const onlyInOutage = ({ loads }: Home, id: string) =>
  loads.some((load) => load.id === id && load.onlyInOutage === true);

function lasts(plan: Plan, words: Words): string {
  const {
    advice: { route },
    home,
  } = plan;
  const { hours, reachesGoal, says } = route.lasting;
  const goal = formatQuantity(home.goalHours.value, 'h');
  const stored = onceStored(plan.home, route);
  const reached = stored?.route.lasting.reachesGoal || reachesGoal;
  const careful = (stored?.route.lasting.hours ?? hours)?.low ?? Infinity;
  const short = Math.round(careful) < home.goalHours.value;
  const asked = reached
    ? `You asked for ${goal}${short ? '; the careful count falls short' : ''}.`
    : `It does not reach the ${goal} you asked for.`;
  if (hours === null || route.carries.length === 0) return `How long: ${says}`;
  const just = !reachesGoal && Math.round(hours.value) === Math.round(home.goalHours.value);
  const likely = `${just ? 'just under' : 'about'} ${formatQuantity(Math.round(hours.value), 'h')}`;
  const bad = hours.low < 0.5 ? 'none at all' : formatQuantity(Math.round(hours.low), 'h');
  const states = stored === null ? '' : ` (${fuelToday(route.fuel!)}); ${sayOnceStored(stored)}`;
  return `How long: ${likely}, careful count ${bad}${states}. ${asked}${sayBothWays(plan, words)}${sayDevicesAlone(plan, words)}`;
}

function notCarried({ advice: { route }, home, routes }: Plan, words: Words): string {
  if (route.carries.length === 0) return 'What it carries: nothing; it gives no power.';
  const missed = mustMissed(home, route).map((load) => load.name);
  const reach = outletsOnly(traitsOf[route.kind])
    ? ' It feeds only what has a plug: no ceiling light, no wall outlet, nothing wired in.'
    : '';
  const all = missed.length > 0 ? carriesAll(home, routes) : null;
  const other =
    all === null
      ? ''
      : ` Cheapest that carries it too: ${words.inSentence(all.title)}, about ${formatQuantity(all.costUsd.value, '$')}, ${forHowLong(all)}.`;
  return missed.length > 0
    ? `What it does not carry, though it must keep running: ${words.listOf(missed.map(words.inSentence))}.${reach}${other}`
    : `What it carries: all that must keep running.${reach}`;
}

/** With its hours, and that they are too few: carrying all for a night is not doing the job. */
function forHowLong({ lasting: { hours, reachesGoal } }: Route): string {
  if (hours === null) return 'while the gas flows';
  const h = (value: number) => formatQuantity(Math.round(value), 'h');
  const short = reachesGoal ? '' : ', too short as well';
  return `for about ${h(hours.value)}, careful count ${h(hours.low)}${short}`;
}

/** The cheapest route that carries everything that must run, for however long. */
function carriesAll(home: Home, routes: readonly Route[]): Route | null {
  const all = routes.filter(
    (route) =>
      route.verdict !== 'cannot' && route.carries.length > 0 && carriesAllMust(home, route),
  );
  return [...all].sort((a, b) => a.costUsd.value - b.costUsd.value)[0] ?? null;
}

/** For a life-support device its own line; else those for a person at risk, in the seasons the plan is for. */
function leave({ home }: Plan): string[] {
  return [...leaveForPeople(home), ...goWhenTold(home)];
}

/** Fire and water that were told leave no time to read on: the order comes first. */
function goWhenTold({ facts }: Home): string[] {
  const told = facts.told('hazards') && facts.has('hazards', 'wildfire', 'flood', 'hurricane');
  return told ? [`If you are told to go, or fire or fast water is near: ${GO_NOW}`] : [];
}

function leaveForPeople(home: Home): string[] {
  const lines = leavingForPeople(home);
  const device = lines.find((line) => line.about === 'device');
  if (device !== undefined) return [device.says];
  const now = lines.filter(({ about }) => about !== 'device' && harmfulSeason(home, about));
  return now.length > 0 ? [`When to leave. ${now.map((line) => line.says).join(' ')}`] : [];
}

/** Whom to call before anything is connected. */
function call({ advice: { route }, electricianFor, home: house }: Plan): string {
  const needed = electricianFor !== 'nothing';
  const home = electricianFor === 'home' ? ', for the home and not for this route' : '';
  const permit = route.parts.some((part) => part.equipmentClass === 'permit');
  const others = othersFor(route, house);
  return `Whom to call: ${needed ? `a licensed electrician${home || ', yes'}` : 'no electrician for this route'}${
    permit ? '; the building department, for permit and inspection' : ''
  }${others.length > 0 ? `; ${others.join('; ')}` : ''}.`;
}

/** Piped gas and the house tank are a gas fitter's; cans and cylinders are not. */
function othersFor(route: Route, { facts }: Home): string[] {
  const piped = route.fuel !== null && route.fuel.atHand === null;
  const tank = route.fuel?.fuel === 'propane' && gasHere(facts) === 'tank';
  const gas = piped || tank;
  const grid = hasFixedBattery(traitsOf[route.kind]);
  return [
    ...(gas ? ['a gas fitter, for the fuel'] : []),
    ...(grid ? ['the power company, for its approval'] : []),
  ];
}
