import type { Home } from '../home/home';
import { formatQuantity } from '../quantity/format-quantity';
import { atRisk } from '../rules/when/at-risk';

/** When to go, whatever is still running. Every plan has these lines. */
export function leavingPoint(home: Home): string[] {
  const people = leavingForPeople(home);
  const lines = [
    'An official order to leave, rising water, fire near: people, medicine, device batteries, go. Leave the rest.',
    'A carbon monoxide alarm sounds, or anyone has a headache or is dizzy: out into fresh air and call 911.',
    ...people,
  ];
  if (!someoneAtRisk(home)) {
    lines.push(
      'The room stays below 60 °F and cannot be warmed, or stays above 90 °F: go somewhere safe. A fan alone does not protect above 90 °F.',
    );
  }
  lines.push(
    'Half of your time is used up: ask the power company for its estimate and make what is left last twice as long. At three quarters: charge the car, pack, and call the place you would go to.',
  );
  lines.push(placeLine(home));
  return lines;
}

/** The lines for a person whose life hangs on a device, or who is made ill sooner than others; empty without one. */
export function leavingForPeople(home: Home): string[] {
  const lines = home.lifeSupport === 'no' ? [] : [deviceLine(home)];
  if (someoneAtRisk(home)) {
    lines.push(
      'For a person at risk: act when the room falls to 65 °F and leave by 60 °F; act at 86 °F and leave at 90 °F, unless the clinician gave other limits.',
    );
  }
  return lines;
}

/** By cold or by heat, by age or by illness; not known counts as yes. */
function someoneAtRisk(home: Home): boolean {
  return atRisk(home, 'cold') !== null || atRisk(home, 'heat') !== null;
}

/** What can be carried must still cover three times the trip plus two hours. */
function deviceLine({ facts }: Home): string {
  const told = facts.told('trip-hours') ? facts.number('trip-hours') : null;
  const trip = told ?? 3;
  const kept = formatQuantity(3 * trip + 2, 'h');
  const basis =
    told === null
      ? 'the trip is not known, so we count 3 hours'
      : `three times your trip of ${formatQuantity(trip, 'h')} plus two hours`;
  return `Life support: leave while what you can carry (device battery, spare batteries, cylinders) still covers ${kept} (${basis}), and at the latest when you start on your last source. If you cannot leave in time, call 911 early and say "on life support".`;
}

function placeLine({ facts }: Home): string {
  if (facts.told('leave-place') && facts.is('leave-place', 'powered-place')) {
    return 'You have a place with power to go to. Call ahead that it has power.';
  }
  return 'Choose now a place to go that has its own power, and a second one. 211 knows the shelters.';
}
