import type { Home } from '../home/home';
import { atRisk } from '../rules/when/at-risk';
import { sayLeaveWithDevice } from '../words/en/say-life-first';
import { lifeFirst } from './life-first';

/** What to do where there is no time to do more. */
export const GO_NOW = 'people, medicine, device batteries, go. Leave the rest.';

/** When to go, whatever is still running. Every plan has these lines. */
export function leavingPoint(home: Home): string[] {
  const people = leavingForPeople(home);
  const lines = [
    `An official order to leave, rising water, fire near: ${GO_NOW}`,
    ...oneRoad(home),
    'A carbon monoxide alarm sounds, or anyone has a headache or is dizzy: out into fresh air and call 911.',
    ...people.map((line) => line.says),
  ];
  if (!someoneAtRisk(home)) {
    lines.push(
      'The room stays below 60 °F and cannot be warmed, or stays above 90 °F: go somewhere safe. A fan alone does not protect above 90 °F.',
    );
  }
  lines.push(
    'Half of your time is used up: ask the power company for its estimate and make what is left last twice as long. At three quarters: charge the car, pack, and call the place you would go to.',
  );
  lines.push(placeLine(home), ...animalLines(home));
  return lines;
}

const isOneRoad = ({ facts }: Home) => facts.told('road-out') && facts.is('road-out', 'one');

/** A road that can close is left by before it does; not sure: it says "if". */
function oneRoad(home: Home): string[] {
  const says =
    'nly one road leads out: go at the first warning, before an order comes. A tree, water or fire can close the road.';
  if (isOneRoad(home)) return [`O${says}`];
  const unsure = home.facts.asked('road-out') && home.facts.open('road-out');
  return unsure ? [`If o${says}`] : [];
}

/** The leaving place takes the animals too, or somebody looks after those that stay. */
function animalLines({ facts }: Home): string[] {
  const has = (id: 'pets' | 'stay-outside') => facts.told('animals') && facts.has('animals', id);
  return [
    ...(has('pets')
      ? [
          'Pets go with you: ask the place now whether it takes them, for many shelters do not. Keep a carrier, food and water for each by the door.',
        ]
      : []),
    ...(has('stay-outside')
      ? [
          'Animals kept outside: agree now with somebody who can take or feed them. Start to move them at the first warning, or leave them water and food for three days.',
        ]
      : []),
  ];
}

/** A line of the leaving point for one person, and what it is about. */
export interface LeavingLine {
  readonly about: 'device' | 'cold' | 'heat';
  readonly says: string;
}

/** The lines for a person whose life hangs on a device, or who is made ill sooner than others; empty without one. */
export function leavingForPeople(home: Home): LeavingLine[] {
  const first = lifeFirst(home);
  const lines: LeavingLine[] =
    first === null ? [] : [{ about: 'device', says: sayLeaveWithDevice(first) }];
  return [...lines, ...byRoom(home, 'cold'), ...byRoom(home, 'heat')];
}

const roomLimits = {
  cold: 'act when the room falls to 65 °F and leave by 60 °F, unless the clinician gave other limits.',
  heat: 'act when the room reaches 86 °F and leave by 90 °F, unless the clinician gave other limits.',
} as const;

/** The same with one road out: who waits for the second figure may find the road closed. */
const withOneRoad = {
  cold: 'leave when the room falls to 65 °F, because only one road leads out, unless the clinician gave other limits.',
  heat: 'leave when the room reaches 86 °F, because only one road leads out, unless the clinician gave other limits.',
} as const;

/** For whoever is made ill sooner than others; where nobody told, it says "if". */
function byRoom(home: Home, by: 'cold' | 'heat'): LeavingLine[] {
  const risk = atRisk(home, by);
  if (risk === null) return [];
  const who = risk.careful
    ? 'If a baby, an older, pregnant or ill person is here'
    : 'For a person at risk';
  return [{ about: by, says: `${who}: ${(isOneRoad(home) ? withOneRoad : roomLimits)[by]}` }];
}

/** By cold or by heat, by age or by illness; not known counts as yes. */
function someoneAtRisk(home: Home): boolean {
  return atRisk(home, 'cold') !== null || atRisk(home, 'heat') !== null;
}

function placeLine({ facts }: Home): string {
  if (facts.told('leave-place') && facts.is('leave-place', 'powered-place')) {
    return 'You have a place with power to go to. Call ahead that it has power.';
  }
  return 'Choose now a place to go that has its own power, and a second one. 211 knows the shelters.';
}
