import type { LeavingLine, PersonLine, PlainLine } from '../../../plan/leaving-point';
import { sayLeaveWithDevice } from '../say-life-first';

/** What to do where there is no time to do more. */
export const GO_NOW = 'people, medicine, device batteries, go. Leave the rest.';

const plain: Readonly<Record<PlainLine, string>> = {
  'order-or-danger': `An official order to leave, rising water, fire near: ${GO_NOW}`,
  'co-alarm':
    'A carbon monoxide alarm sounds, or anyone has a headache or is dizzy: out into fresh air and call 911.',
  'room-limits':
    'The room stays below 60 °F and cannot be warmed, or stays above 90 °F: go somewhere safe. A fan alone does not protect above 90 °F.',
  'half-used-up':
    'Half of your time is used up: ask the power company for its estimate and make what is left last twice as long. At three quarters: charge the car, pack, and call the place you would go to.',
  'powered-place': 'You have a place with power to go to. Call ahead that it has power.',
  'choose-a-place':
    'Choose now a place to go that has its own power, and a second one. 211 knows the shelters.',
  'pets-go-along':
    'Pets go with you: ask the place now whether it takes them, for many shelters do not. Keep a carrier, food and water for each by the door.',
  'animals-outside':
    'Animals kept outside: agree now with somebody who can take or feed them. Start to move them at the first warning, or leave them water and food for three days.',
};

/** When to go, in a sentence or two. */
export function sayLeaving(line: LeavingLine): string {
  switch (line.code) {
    case 'one-road':
      return `${line.careful ? 'If only' : 'Only'} one road leads out: go at the first warning, before an order comes. A tree, water or fire can close the road.`;
    case 'device':
      return sayLeaveWithDevice(line.first);
    case 'cold':
    case 'heat':
      return byRoom(line);
    default:
      return plain[line.code];
  }
}

const roomLimits = {
  cold: 'act when the room falls to 65 °F and leave by 60 °F, unless the clinician gave other limits.',
  heat: 'act when the room reaches 86 °F and leave by 90 °F, unless the clinician gave other limits.',
} as const;

/** The same with one road out. */
const withOneRoad = {
  cold: 'leave when the room falls to 65 °F, because only one road leads out, unless the clinician gave other limits.',
  heat: 'leave when the room reaches 86 °F, because only one road leads out, unless the clinician gave other limits.',
} as const;

function byRoom({
  code,
  careful,
  oneRoad,
}: Extract<PersonLine, { code: 'cold' | 'heat' }>): string {
  const who = careful
    ? 'If a baby, an older, pregnant or ill person is here'
    : 'For a person at risk';
  return `${who}: ${(oneRoad ? withOneRoad : roomLimits)[code]}`;
}
