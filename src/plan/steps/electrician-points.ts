import type { QuestionId } from '#compiled/question-ids.js';
import rules from '#compiled/words/en/rules.js';
import type { Home } from '../../home/home';
import { loadNames } from '../../home/loads/load-names';
import { formatQuantity, formatRange } from '../../quantity/format-quantity';
import type { Route } from '../../routes/route';
import { hasWiringToDo } from '../../routes/wiring-to-do';
import type { Finding } from '../../rules/rule';
import { type RuleId, ruleOf } from '../../tables/rules';
import { firstSentence } from '../../words/en/first-sentence';
import { sayRule } from '../../words/rule-sentences';
import { givesWatts } from '../electrical/high-end';

/** What a licensed electrician is needed for in this plan. */
export type ElectricianFor = 'route' | 'home' | 'nothing';

/** What can injure or kill; what merely keeps the backup from working stands under the cautions and in figures. */
const CAN_INJURE = 4;

/** The points where a licensed electrician is required, with what the quote must meet; `cautions` of this route alone. */
export function electricianPoints(
  home: Home,
  route: Route,
  cautions: readonly Finding[],
): string[] {
  const theirs = cautions.filter(
    (one) =>
      one.who[0] === 'licensed electrician' &&
      one.severity >= CAN_INJURE &&
      !forbids.includes(one.id),
  );
  const needed = electricianFor(route, cautions);
  const saidOf = (some: readonly Finding[]) =>
    some.map((one) =>
      ruleOf(one.id).whole ? sayRule(rules, one) : firstSentence(sayRule(rules, one)),
    );
  if (needed === 'route') return [...quotePoints(home, route), ...saidOf(theirs)];
  if (needed === 'home') return [plugsOnly, ...saidOf(theirs)];
  // What only forbids asks for nobody; it stands under the cautions.
  const work = theirs.filter(({ id }) => !neverWork.includes(id));
  return [work.length > 0 ? `${noWork} ${mayStill}` : noWork, ...saidOf(work)];
}

/** By the route, by what the household told of its home (`cautions` of this route alone), or for nothing. */
export function electricianFor(route: Route, cautions: readonly Finding[]): ElectricianFor {
  if (hasWiringToDo(route)) return 'route';
  const work = cautions.some(
    (one) =>
      !one.careful &&
      one.who[0] === 'licensed electrician' &&
      one.severity >= CAN_INJURE &&
      !neverWork.includes(one.id),
  );
  return work ? 'home' : 'nothing';
}

/** It forbids what nobody may do, an electrician neither; it stands under the cautions. */
const forbids: readonly RuleId[] = ['no-backfeed'];
/** Cautions that forbid something rather than ask for work. */
const neverWork: readonly RuleId[] = ['no-backfeed', 'vehicle-house-ok'];
/** Said where the route needs no wiring, but the home needs an electrician. */
const plugsOnly =
  'The route advised asks for no wiring work; the electrician is needed for what stands below.';
const noWork =
  'No work in this plan needs a licensed electrician. What would: any wire fixed to the house, such as an inlet, a transfer switch, a new outlet or circuit, a fixed generator, a fixed battery or roof solar, with a permit.';
const mayStill = 'Answers that are missing may still call for one, for what stands below.';

function quotePoints(home: Home, route: Route): string[] {
  const points = [
    `Everything inside the panel, and every wire fixed to the house, for: ${route.title.toLowerCase()}.`,
    circuitsLine(home, route),
  ];
  if (route.power !== null) {
    const { runningWatts: w, startDemandVa: va } = route.power;
    const soft = route.parts.some((part) => part.equipmentClass === 'soft-starter');
    const softened = soft ? ' and the compressor behind its soft starter' : '';
    points.push(
      `With all of these on at once${softened}, the source must give ${formatRange(w.low, w.value, w.high, 'W')} for hours and stand their hardest start, with the rest running, of ${formatRange(va.low, va.value, va.high, 'VA')}. Plan size: ${sizeOf(route)}.`,
    );
  }
  if (route.usableKwh !== null) {
    points.push(`Usable storage: ${formatQuantity(route.usableKwh, 'kWh')} at five years old.`);
  }
  points.push(serviceLine(home));
  points.push(
    "The code edition in force, local amendments, the load calculation, the bus check, grounding and the one neutral bond are the electrician's and the inspector's to decide.",
  );
  return points;
}

/** What must keep running and what is good to have, apart: the counts of the job and of the route differ by it. */
function circuitsLine(home: Home, route: Route): string {
  const ids = new Set(home.loads.filter((l) => l.rank === 'must').map((l) => l.id));
  const must = loadNames(
    home,
    route.carries.filter((id) => ids.has(id)),
  );
  const more = loadNames(
    home,
    route.carries.filter((id) => !ids.has(id)),
  );
  const also = more.length > 0 ? `; and of what is good to have: ${more.join(', ')}` : '';
  return `Circuits to carry, which must keep running: ${must.join(', ')}${also}.`;
}

/** The size on the label, and what it still gives at this height and heat where that is less. */
function sizeOf(route: Route): string {
  const label = formatQuantity(route.power!.continuousWatts, 'W');
  const there = formatQuantity(givesWatts(route), 'W');
  return there === label ? label : `${label} on its label, ${there} at this height and heat`;
}

function serviceLine({ facts }: Home): string {
  const amps = (id: QuestionId) => {
    const value = facts.number(id);
    return value === null ? 'not known' : formatQuantity(value, 'A');
  };
  const spaces = facts.told('panel-spaces') ? `${facts.number('panel-spaces')}` : 'not counted';
  return `Service as found by the household, to be confirmed on site: main breaker ${amps('main-amps')}, panel bus ${amps('panel-bus')}, free spaces ${spaces}.`;
}
