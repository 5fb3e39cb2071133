import { formatQuantity } from '../../quantity/format-quantity';

const STEP_MIN = 5;

/** Hours a device has in hand, as a clock shows them and never more than there are: "2 h 50 min", "2.5 h". */
export const atMostHours = (hours: number): string => byTheClock(hours, Math.floor);

/** Hours that must be left, never fewer than are needed. */
export const atLeastHours = (hours: number): string => byTheClock(hours, Math.ceil);

/** A hair, so that 2.5 hours are not taken for a little more or less. */
const HAIR = 1e-6;

function byTheClock(hours: number, whole: (steps: number) => number): string {
  const hair = whole === Math.ceil ? -HAIR : HAIR;
  if (hours >= 48) return formatQuantity(whole(hours + hair), 'h');
  const minutes = STEP_MIN * whole((hours * 60) / STEP_MIN + hair);
  if (hours <= 0 || minutes % 30 === 0) return formatQuantity(Math.max(0, minutes / 60), 'h');
  const [full, rest] = [Math.floor(minutes / 60), minutes % 60];
  return full === 0 ? `${rest} min` : `${full} h ${rest} min`;
}
