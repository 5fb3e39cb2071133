export type Spot = readonly [x: number, y: number];

/** So far apart, in units of the view box, the middles of two letters, or of a letter and a dot, do not touch. */
export const APART = 13;

/** So far from the middle of a letter a line across does not strike it through. */
export const OFF_LINE = 7;

/** From the middle of a dot to that of its letter, from best to worst; the first is taken where none is free. */
const around: readonly Spot[] = [
  [14, -12],
  [-14, -12],
  [14, 12],
  [-14, 12],
  [0, -18],
  [0, 18],
  [28, -12],
  [-28, -12],
  [28, 12],
  [-28, 12],
];

/** The middle of the letter of each dot, beside it and on no other dot or letter, on no line across, right of the axis, and between the highest and the lowest. */
export function letterSpots(
  dots: readonly Spot[],
  { lines, axis }: { lines: readonly number[]; axis: number },
): Spot[] {
  const [ceiling, floor] = [Math.min(...lines), Math.max(...lines)];
  const taken: Spot[] = [];
  for (const [x, y] of dots) {
    const spots = around.map(([right, down]): Spot => [x + right, y + down]);
    const free = spots.find(
      (spot) =>
        spot[1] > ceiling &&
        spot[1] < floor &&
        spot[0] - axis >= OFF_LINE &&
        lines.every((line) => Math.abs(line - spot[1]) >= OFF_LINE) &&
        [...dots, ...taken].every((other) => apart(spot, other)),
    );
    taken.push(free ?? spots[0]!);
  }
  return taken;
}

const apart = (one: Spot, other: Spot) => Math.hypot(one[0] - other[0], one[1] - other[1]) >= APART;

/** From the edge of a dot to its letter, so that none is taken for that of its neighbor. */
export function pointer([x, y]: Spot, [toX, toY]: Spot): [Spot, Spot] {
  const far = Math.hypot(toX - x, toY - y);
  const at = (part: number): Spot => [x + (toX - x) * part, y + (toY - y) * part];
  return [at(DOT / far), at(1 - LETTER / far)];
}

/** Half of a dot and of a letter, with a little room around it. */
const DOT = 6;
const LETTER = 7;
