import type { LifeFirst, LifeTeam } from '../../plan/life-first';
import { formatQuantity } from '../../quantity/format-quantity';
import { atLeastHours, atMostHours } from './device-hours';
import { listOf } from './list-of';

const people: Readonly<Record<LifeTeam, string>> = {
  clinician: 'the doctor or nurse',
  supplier: 'the device supplier',
  'power-company': 'the power company',
  'fire-department': 'the fire department (office line, not 911)',
};

const ways: Readonly<Record<LifeFirst['secondWays'][number], string>> = {
  cylinders: 'oxygen cylinders',
  'spare-batteries': 'charged spare batteries',
  'hand-powered': 'a way that works by hand',
  'other-place': 'a place with power that has agreed to take you in',
};

/** What comes first where somebody cannot live without a device, most urgent first. */
export function sayLifeFirst(first: LifeFirst): string[] {
  const call =
    first.callToday.length > 0
      ? `Call today and say that someone here depends on a powered device: ${listOf(first.callToday.map((one) => people[one]))}.`
      : 'Everybody who should know about the device has been told. Ask each of them once a year whether that still stands.';
  return [call, battery(first), secondWay(first)];
}

function battery({ ownBattery: { toldHours, tested, countedHours } }: LifeFirst): string {
  if (toldHours === 0)
    return 'The device has no battery of its own. Ask the supplier today for one that can be carried, or for a device that has one.';
  if (toldHours === null)
    return "The device's own battery is not known and counts as none: ask the supplier.";
  if (tested)
    return `The device's own battery was timed and counts ${atMostHours(countedHours)}. Time it again every year.`;
  return `Have the device's own battery timed, with the supplier's agreement, the second way ready and somebody watching. Until then it counts as ${atMostHours(countedHours)}, half of the ${formatQuantity(toldHours, 'h')} you told us.`;
}

function secondWay({ secondWays }: LifeFirst): string {
  if (secondWays.length === 0)
    return 'Agree on a second way that needs no power from this house; the plan is not complete before.';
  return `Second way you named: ${listOf(secondWays.map((one) => ways[one]))}. Check it today, and ask how many hours it gives.`;
}

/** Why one road out asks for more hours in hand; the hours themselves are in the figure. */
const roads: Readonly<Record<LifeFirst['roads'], string>> = {
  more: '',
  one: ', and four more because only one road leads out and may be closed',
  'not-known': ', and four more because we do not know of a second road out',
};

/** When to leave with a device, by what can be carried and by the trip. */
export function sayLeaveWithDevice(first: LifeFirst): string {
  const kept = atLeastHours(first.leaveAtHours);
  const trip = formatQuantity(first.tripHours, 'h');
  const basis = `${
    first.tripTold
      ? `three times your trip of ${trip} plus two hours`
      : `the trip is not known, so we count ${trip} times three, plus two hours`
  }${roads[first.roads]}`;
  const late = 'If you cannot leave in time, call 911 early and say "on life support".';
  if (first.told && first.leaveAtOnce) {
    const counted = atMostHours(first.ownBattery.countedHours);
    return `Life support: leave as soon as the power fails, or before a storm or a cut that is announced. The device's own battery counts as ${counted}, and ${kept} should be left when you set out (${basis}). Tested cylinders or spare batteries may add to it: ask the supplier. ${late}`;
  }
  const head = first.told ? 'Life support' : 'If somebody here lives by a powered device';
  return `${head}: leave while what you can carry (device battery, spare batteries, cylinders) still covers ${kept} (${basis}), and at the latest when you start on your last source. ${late}`;
}
