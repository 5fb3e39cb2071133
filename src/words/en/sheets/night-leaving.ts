import type { LeavingLine } from '../../../plan/leaving-point';
import type { LifeFirst } from '../../../plan/life-first';
import { atLeastHours, atMostHours } from '../device-hours';
import { sayLeaving } from '../leaving/say-leaving';

/** When to leave, said for the night; a line that is not here stands as in the details. */
const short: Readonly<Partial<Record<LeavingLine['code'], string>>> = {
  'order-or-danger':
    'Told to go, water rises, fire is near: people, medicine, device batteries, go.',
  'co-alarm': 'Carbon monoxide alarm, headache, dizziness: out to fresh air, call 911.',
  'room-limits':
    'The room stays below 60 °F and cannot be warmed, or above 90 °F: go somewhere safe. A fan alone does not protect above 90 °F.',
  'half-used-up':
    'Half your time used up: ask the power company how long, make the rest last twice as long. At three quarters: charge the car, pack, call the place.',
  'powered-place': 'Go to your place with power. Call ahead that it has power.',
  'choose-a-place': 'Choose now a place that has its own power, and a second. 211 knows shelters.',
  'pets-go-along': 'Pets go too: ask the place. Carrier, food and water by the door.',
  'animals-outside':
    'Animals outside: move them, or have them fetched, at the first warning; or leave water and food for three days.',
};

/** A line on when to leave, for somebody who stands in the dark: what to do, without why. */
export function nightLeaving(line: LeavingLine): string {
  if (line.code === 'one-road')
    return `${line.careful ? 'If only' : 'Only'} one road leads out: go at the first warning, before it can close.`;
  if (line.code === 'cold' || line.code === 'heat') return nightRooms([line]);
  if (line.code === 'device') return nightDevice(line.first);
  return short[line.code] ?? sayLeaving(line);
}

/** With a device to live by: the hours in hand and what to do; what they are made of stands in the details. */
function nightDevice({ told, leaveAtOnce, leaveAtHours, ownBattery }: LifeFirst): string {
  const kept = atLeastHours(leaveAtHours);
  const late = 'Cannot leave in time? Call 911 early and say "on life support".';
  if (told && leaveAtOnce)
    return `Life support: leave as soon as the power fails, or before a storm or a cut that is announced, with ${kept} in hand. Its own battery counts as ${atMostHours(ownBattery.countedHours)}; cylinders or spare batteries may add to it. ${late}`;
  const who = told ? 'Life support' : 'If somebody here lives by a powered device';
  return `${who}: leave while what you can carry (device battery, spare batteries, cylinders) covers ${kept}, at the latest when you start on your last source. ${late}`;
}

type RoomLine = Extract<LeavingLine, { code: 'cold' | 'heat' }>;

/** The room where something is done about it, and the room that is left, °F; both from the whole line. */
const limits = { cold: ['65 °F', '60 °F'], heat: ['86 °F', '90 °F'] } as const;

/**
 * The limits of the room in one line, for somebody made ill sooner than others. Careful where nobody told of such a
 * person at all; where one was told of, the lines are meant for that person.
 */
export function nightRooms(lines: readonly RoomLine[]): string {
  const careful = lines.every((line) => line.careful);
  const who = careful ? 'If a baby, an older, pregnant or ill person is here' : 'Person at risk';
  const act = lines.map(({ code }) => limits[code][0]).join(' or ');
  const leave = lines.map(({ code }) => limits[code][1]).join(' or ');
  return lines.some(({ oneRoad }) => oneRoad)
    ? `${who}: leave at ${act} indoors (one road out), or as a doctor says.`
    : `${who}: act at ${act} indoors, leave by ${leave}, or as a doctor says.`;
}
