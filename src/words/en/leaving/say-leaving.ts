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
      return byRoom([line]);
    default:
      return plain[line.code];
  }
}

type RoomLine = Extract<PersonLine, { code: 'cold' | 'heat' }>;

const isRoom = (line: LeavingLine): line is RoomLine =>
  line.code === 'cold' || line.code === 'heat';

/** All of them, the limits of a cold and of a hot room in one: they are for the same person. */
export function sayLeavings(lines: readonly LeavingLine[]): string[] {
  const rooms = lines.filter(isRoom);
  return lines.flatMap((line) => {
    if (!isRoom(line)) return [sayLeaving(line)];
    return line === rooms[0] ? [byRoom(rooms)] : [];
  });
}

/** What the room does when something is to be done, and the room that is left. */
const limits = {
  cold: { act: 'falls to 65 °F', leave: '60 °F' },
  heat: { act: 'reaches 86 °F', leave: '90 °F' },
} as const;

function byRoom(lines: readonly RoomLine[]): string {
  const who = lines.every(({ careful }) => careful)
    ? 'If a baby, an older, pregnant or ill person is here'
    : 'For a person at risk';
  const act = lines.map(({ code }) => limits[code].act).join(' or ');
  const by = lines.map(({ code }) => limits[code].leave).join(' or ');
  // With one road out nobody waits for the second figure.
  const what = lines.some(({ oneRoad }) => oneRoad)
    ? `leave when the room ${act}, because only one road leads out`
    : `act when the room ${act} and leave by ${by}`;
  return `${who}: ${what}, unless the clinician gave other limits.`;
}
