import { isOverDrawnYears } from '../quantity/end-rule';
import type { Figure } from '../quantity/figure';
import { formatQuantity } from '../quantity/format-quantity';
import { shown } from '../quantity/shown';
import type { ShownGlance, ShownRoute } from './shown-draft';

/** Ifs shown of a route; the plan has them all. */
const MOST_IFS = 2;

/** The place as we read the ZIP code: a slip in it shows here. */
export function placeRead({ nearTown }: ShownGlance): string[] {
  return nearTown === null ? [] : [`Weather as near ${nearTown}.`];
}

const NO_PLAN_YET = 'A first plan stands here once enough is told.';

/** What a sentence of the plan so far is about. */
export type GlancePart =
  | 'place'
  | 'life'
  | 'none'
  | 'route'
  | 'price'
  | 'lasts'
  | 'leaves-out'
  | 'if';

export interface GlanceSentence {
  readonly part: GlancePart;
  readonly says: string;
}

/** The plan so far, a sentence each: what, for how much, how long, without what, and if what. */
export function glanceWords(glance: ShownGlance): string[] {
  return glanceSentences(glance).map(({ says }) => says);
}

/** The same, each with what it is about. */
export function glanceSentences(glance: ShownGlance): GlanceSentence[] {
  const { route, lifeSupport } = glance;
  const as = (part: GlancePart, all: readonly string[]) => all.map((says) => ({ part, says }));
  const place = as('place', placeRead(glance));
  if (route === null) {
    const calls = lifeSupport === 'yes' ? lifeAlone(glance) : [];
    return [...place, ...as('life', calls), ...as('none', [NO_PLAN_YET])];
  }
  const { isSource, title, costUsd, leavesOut, ifs } = route;
  const ready = 'No source of power yet: get ready with lights, water, a cooler and alarms';
  return [
    ...place,
    ...as('life', life(glance)),
    ...as('route', [`${isSource ? title : ready}.`]),
    ...as('price', [`About ${priceWords(costUsd)}.`, ...aboveWords(route)]),
    ...as('lasts', isSource ? [lastsWords(route, glance.goalHours)] : []),
    ...as('leaves-out', leavesOut.length === 0 ? [] : [leavesOutWords(leavesOut)]),
    ...as(
      'if',
      ifs.slice(0, MOST_IFS).map((one) => `Only if ${one}.`),
    ),
  ];
}

/** Why nothing is bought, where it is the money. */
const aboveWords = ({ sourceAboveUsd }: ShownRoute): string[] =>
  sourceAboveUsd === null
    ? []
    : [
        `Your money buys no source that helps here; the cheapest is about ${shown(sourceAboveUsd, '$')}.`,
      ];

const leavesOutWords = (names: readonly string[]) =>
  `It leaves out: ${names.map(lower).join(', ')}.`;

/** Where life hangs on a device nothing is a thing to buy: a source is a bridge. */
function life(glance: ShownGlance): string[] {
  return dependsWords(glance).map(
    (says) => `${says} First call the doctor and the supplier; what follows is only a bridge.`,
  );
}

/** The same where nothing can be advised yet: the calls do not wait for a plan. */
export function lifeAlone(glance: ShownGlance): string[] {
  return dependsWords(glance).map(
    (says) =>
      `${says} Do not wait for a plan: call the doctor and the device supplier today, and agree on a second way that needs no power from this house.`,
  );
}

function dependsWords({ lifeSupport }: ShownGlance): string[] {
  if (lifeSupport === 'no') return [];
  const who = lifeSupport === 'yes' ? 'Someone here depends' : 'Someone here may depend';
  return [`${who} on a powered device.`];
}

/** "Furnace" becomes "furnace", "CPAP" stays. */
function lower(name: string): string {
  return /^[A-Z][a-z]/.test(name) ? name[0]!.toLowerCase() + name.slice(1) : name;
}

/** "$1,200 to $3,400". */
export function priceWords({ low, high }: Pick<Figure, 'low' | 'high'>): string {
  const [from, to] = [shown(low, '$'), shown(high, '$')];
  return from === to ? from : `${from} to ${to}`;
}

function lastsWords({ hours, reachesGoal, stored }: ShownRoute, goal: Figure): string {
  const asked = (reaches: boolean) =>
    `you asked for ${formatQuantity(goal.value, 'h')}${reaches ? '' : ', so it falls short'}.`;
  if (hours === null) return `It lasts while the fuel or gas comes; ${asked(true)}`;
  if (stored === null) return `It lasts ${aboutHours(hours)}; ${asked(reachesGoal)}`;
  const cans = `with ${formatQuantity(stored.gallons, 'gal')} of fuel stored`;
  return `It lasts ${aboutHours(stored.hours)} ${cans}, ${aboutHours(hours)} before that; ${asked(stored.reachesGoal)}`;
}

/** Hours as the plan shows them; those counted over few drawn years rounded so that they do not look more exact than they are. */
export function aboutHours({ low, value, source }: Figure): string {
  const round = isOverDrawnYears(source.ends) ? roundHours : Math.round;
  const [from, to] = [round(low), round(value)];
  if (from === to) return `about ${formatQuantity(to, 'h')}`;
  const upTo = formatQuantity(to, 'h');
  if (from === 0) return `up to about ${upTo}`;
  // "12 to 18 h", but "32 h to 3 days 12 h".
  const fromWords = formatQuantity(from, 'h');
  return `about ${fromWords.endsWith(' h') && upTo === `${to} h` ? from : fromWords} to ${upTo}`;
}

/** Two digits at most: 7, 18, 36, 120 h. */
function roundHours(hours: number): number {
  const step = hours < 12 ? 1 : hours < 48 ? 2 : hours < 120 ? 6 : 24;
  return Math.floor(hours / step) * step;
}
