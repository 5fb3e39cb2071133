import type { Home } from '../home/home';
import { wiredKinds } from '../home/route-kind';
import { formatQuantity, formatRange } from '../quantity/format-quantity';
import type { Route } from '../routes/route';
import type { Finding } from '../rules/rule';

/** What can injure or kill; what merely keeps the backup from working stands under the cautions and in figures. */
const CAN_INJURE = 4;

/** The points where a licensed electrician is required, with what the quote must meet. */
export function electricianPoints(
  home: Home,
  route: Route,
  cautions: readonly Finding[],
): string[] {
  const points: string[] = [];
  if (wiredKinds.includes(route.kind)) points.push(...quotePoints(home, route));
  for (const caution of cautions) {
    const theirs = caution.who[0] === 'licensed electrician' && caution.severity >= CAN_INJURE;
    if (theirs) points.push(firstSentence(caution.says));
  }
  return points;
}

function quotePoints(home: Home, route: Route): string[] {
  const points = [
    `Everything inside the panel, and every wire fixed to the house, for: ${route.title.toLowerCase()}.`,
    `Circuits to carry: ${route.carries.join(', ')}.`,
  ];
  if (route.power !== null) {
    const { runningWatts: w, startDemandVa: va } = route.power;
    points.push(
      `The source must give ${formatRange(w.low, w.value, w.high, 'W')} for hours and stand a start of ${formatRange(va.low, va.value, va.high, 'VA')}. Plan size: ${formatQuantity(route.power.continuousWatts, 'W')} at this site.`,
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

/** The rest of a caution stands under the cautions. */
function firstSentence(says: string): string {
  return `${says.split(/(?<=[.!?]) /)[0]}`;
}

function serviceLine({ facts }: Home): string {
  const amps = (id: string) => {
    const value = facts.number(id);
    return value === null ? 'not known' : formatQuantity(value, 'A');
  };
  const spaces = facts.told('panel-spaces') ? `${facts.number('panel-spaces')}` : 'not counted';
  return `Service as found by the household, to be confirmed on site: main breaker ${amps('main-amps')}, panel bus ${amps('panel-bus')}, free spaces ${spaces}.`;
}
