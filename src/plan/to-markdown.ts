import type { Load } from '../home/home';
import type { Figure } from '../quantity/figure';
import { formatQuantity, formatRange } from '../quantity/format-quantity';
import type { Route } from '../routes/route';
import type { Finding } from '../rules/rule';
import { carriesOfMust } from './carries-of-must';
import { electricalLines, settleLines, startOrderLine } from './electrical/say-electrical';
import { inSentence, listOf } from './list-of';
import { sayMoney } from './money/say-money';
import type { Plan } from './plan';
import { sayRideThrough } from './ride-through/say-ride-through';

/** The plain-language summary, for the household, as Markdown that needs nothing but a reader. */
export function planMarkdown(plan: Plan): string {
  const sections = [
    head(plan),
    ...toSettle(plan),
    ['## The job', ...plan.job],
    mustRun(plan),
    routes(plan),
    advised(plan),
    sayRideThrough(plan.rideThrough),
    sayMoney(plan.money, plan.advice.route.kind),
    list('## What it will not do', plan.willNotDo, 'Nothing that must keep running is left out.'),
    cautions(plan),
    list('## When to leave', plan.leavingPoint),
    list(
      '## Where a licensed electrician is required',
      plan.electrician,
      'Nothing in the route advised is wired to the house. The day it is, a licensed electrician does it, with a permit.',
    ),
    list('## For the electrician, in figures (all of it in the plan file)', electricalLines(plan)),
    ladder(plan),
    toFindOut(plan),
    assumptions(plan),
    list(
      '## Next steps',
      plan.nextSteps.map((step) => `${step.what} (${step.who})`),
    ),
    sureness(plan),
  ];
  return `${sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n\n'))
    .join('\n\n')}\n`;
}

function head(plan: Plan): string[] {
  const draft =
    plan.state === 'draft'
      ? [`This is a DRAFT, not for buying from: ${plan.draftBecause.join('; ')}.`]
      : [];
  return [
    `# Backup power plan: ${plan.name}`,
    `Made from the answers given, as of ${plan.asOf}. A planning aid, not an electrical design: a licensed electrician, the building department and the local code decide.`,
    ...draft,
  ];
}

/** Answers that do not fit together stand first: what follows rests on them. */
function toSettle(plan: Plan): string[][] {
  const lines = settleLines(plan);
  return lines.length === 0
    ? []
    : [list('## Settle these first: two answers do not fit together', lines)];
}

function mustRun(plan: Plan): string[] {
  const season = plan.home.goalSeasons[0]!;
  const row = (load: Load) =>
    `| ${load.name} | ${say(load.runningWatts)} | ${load.startVa === null ? 'no motor' : say(load.startVa)} | ${sayDay(load.kwhPerDay[season])} |`;
  if (plan.mustRun.length === 0) return ['## What must keep running', 'Nothing was named.'];
  return [
    '## What must keep running',
    [
      `| Load | While it runs | When it starts | A hard ${season} day |`,
      '|---|---|---|---|',
      ...plan.mustRun.map(row),
    ].join('\n'),
    billLine(plan),
    ...(plan.home.calibration === null ? [] : [plan.home.calibration]),
  ];
}

function billLine({ billCheck }: Plan): string {
  if (billCheck.verdict === 'not-possible')
    return `Check against the bill: not possible, because ${billCheck.because}.`;
  return `Check against the bill: ${billCheck.says}`;
}

function routes(plan: Plan): string[] {
  const { advice } = plan;
  const preparation = plan.routes.find((route) => route.kind === 'preparation')!;
  const shown = [...new Set([advice.route, ...advice.beside, preparation])];
  const row = (route: Route) =>
    `| ${route.title} | ${carried(plan, route)} | ${short(route)} | ${say(route.costUsd)} | ${priceYears(route)} |`;
  const cannot = plan.routes.filter((route) => route.verdict === 'cannot');
  const others = plan.routes.filter(
    (route) => route.verdict !== 'cannot' && !shown.includes(route),
  );
  return [
    '## The routes side by side',
    [
      '| Route | Of what must run | How long | Cost installed | Prices of |',
      '|---|---|---|---|---|',
      ...shown.map(row),
    ].join('\n'),
    'Costs are ranges to ask quotes against, never quotes.',
    ...(others.length > 0
      ? ['Also possible here:', bullets(others.map((r) => otherLine(plan, r)))]
      : []),
    ...(cannot.length > 0
      ? ['Not possible here:', bullets(cannot.map((r) => `${r.title}: ${r.stops.join('; ')}.`))]
      : []),
  ];
}

/** "Power pack: 5 of 7, 43 h, $1,600 ($900 to $2,600). Without the furnace, which is wired in, not plugged in." */
function otherLine(plan: Plan, route: Route): string {
  const missed = route.leavesOut.filter((load) => load.must && !load.why.includes('one job'));
  const without = missed.map((load) => `${inSentence(load.name)} (${load.why})`);
  const rest = without.length > 0 ? ` Without ${listOf([...new Set(without)])}.` : '';
  return `${route.title}: ${carried(plan, route)}, ${short(route)}, ${say(route.costUsd)}.${rest}`;
}

function carried(plan: Plan, route: Route): string {
  if (route.carries.length === 0) return 'none';
  const { carried: some, of } = carriesOfMust(route, plan.mustRun.length);
  return some === of ? 'all' : `${some} of ${of}`;
}

function short(route: Route): string {
  if (route.carries.length === 0) return 'no power';
  const { hours } = route.lasting;
  if (hours === null) return 'while the gas flows';
  return hours.value >= 336 ? 'two weeks or more' : formatQuantity(Math.round(hours.value), 'h');
}

function priceYears(route: Route): string {
  const years = route.parts.map((p) => p.year).filter((year) => year > 0);
  if (years.length === 0) return 'none';
  const [from, to] = [Math.min(...years), Math.max(...years)];
  return from === to ? String(from) : `${from} to ${to}`;
}

function advised(plan: Plan): string[] {
  const { route, because } = plan.advice;
  const parts = route.parts.map((p) => `${p.name}: ${say(p.costUsd)}`);
  return [
    `## The one advised: ${route.title.toLowerCase()}`,
    because,
    ...(route.carries.length > 0 ? [`It carries: ${route.carries.join(', ')}.`] : []),
    route.lasting.says,
    ...(route.fuel === null ? [] : [`It burns ${say(route.fuel.perDay)} of ${route.fuel.fuel}.`]),
    `When the grid fails: ${route.gap}.`,
    ...(parts.length > 0 ? ['What it is made of:', bullets(parts)] : []),
    ...(route.ifs.length > 0 ? ['It works if:', bullets(route.ifs)] : []),
    ...(route.notes.length > 0 ? ['Good to know:', bullets(route.notes)] : []),
  ];
}

function cautions(plan: Plan): string[] {
  const by = (from: number, to: number) =>
    plan.cautions
      .filter((c) => c.severity >= from && c.severity <= to)
      .map((c) => sayCaution(c, to <= 3));
  const groups: [string, string[]][] = [
    ['These can kill. Read them aloud once:', by(5, 5)],
    ['These can injure, burn or flood:', by(4, 4)],
    ['These keep the backup from working, or cost money (in full in the plan file):', by(1, 3)],
  ];
  const said = groups.filter(([, items]) => items.length > 0);
  return ['## Cautions', ...said.flatMap(([title, items]) => [title, bullets(items)])];
}

/** Grave ones in full; of the lesser ones the first sentence, for the plan file has the rest. */
function sayCaution(caution: Finding, short: boolean): string {
  const who = caution.who.join(', ');
  const unknown = caution.careful ? ` Shown because an answer is missing: ${caution.because}` : '';
  const says = short ? caution.says.split(/(?<=[.!?]) /)[0] : caution.says;
  return `${says} (Who: ${who}.)${unknown}`;
}

function ladder(plan: Plan): string[] {
  const line = (step: Plan['ladder'][number]) => {
    const what = step.switchOff.length > 0 ? step.switchOff.join(', ') : 'nothing more';
    const at =
      step.atPercent === 100 ? 'From the start' : `At ${step.atPercent} % of charge or fuel`;
    const gain =
      step.gainsHours === null
        ? ''
        : ` That buys about ${formatQuantity(Math.max(1, Math.round(step.gainsHours)), 'h')}.`;
    return `${at}, switch off: ${what} (${step.why}).${gain}`;
  };
  const order = startOrderLine(plan);
  return [
    '## What goes off, in which order',
    bullets(plan.ladder.map(line)),
    ...(order === null ? [] : [order]),
  ];
}

function toFindOut(plan: Plan): string[] {
  const line = (one: Plan['toFindOut'][number]) =>
    `${one.says}${one.safety ? ' (a safety answer: advice is held back until it is known)' : ''}. ${one.how}`;
  return list(
    '## Worth finding out',
    plan.toFindOut.slice(0, 12).map(line),
    'Nothing that would change this plan much.',
  );
}

function assumptions(plan: Plan): string[] {
  const lines = plan.assumptions.map(
    (a) => `${a.says}: ${a.assumed}. ${a.because}${/[.!?]$/.test(a.because) ? '' : '.'}`,
  );
  return list('## What we assumed', lines, 'Nothing: every question that applies was answered.');
}

function sureness(plan: Plan): string[] {
  const { place } = plan.home.site;
  return [
    '## How sure this is',
    `${place.basis} ${place.stationsUsed} ${place.warnings.join(' ')}`.trim(),
    `Weather: ${plan.weatherYears} drawn years from those stations' statistics, seed ${plan.seed}; the same answers always give the same plan.`,
    `Outages to expect, weak evidence: ${say(plan.outlook.ordinaryTimes)} ordinary ones and ${say(plan.outlook.majorTimes)} major ones; the chance of at least one as long as your goal in ten years is ${say(plan.outlook.chanceOfGoal)}.`,
    `Figures come from your labels first, then from published tables and common practice. The plan file names the source beside each. There are ${plan.sources.length} sources.`,
  ];
}

function list(title: string, items: readonly string[], none = 'Nothing.'): string[] {
  return [title, items.length > 0 ? bullets(items) : none];
}

/** A list whose items hold no inline marks, so that every reader prints it plainly. */
function bullets(items: readonly string[]): string {
  return items.map((item) => `- ${item.replace(/[*_`|]/g, '')}`).join('\n');
}

function say(figure: Figure): string {
  return formatRange(figure.low, figure.value, figure.high, figure.unit);
}

function sayDay(figure: Figure): string {
  return formatRange(figure.low, figure.value, figure.high, 'kWh');
}
