import { tinyKwh } from './convex-step';

/** A corner of a line: a charge or a change, kWh, and the cost there, $. */
export interface Corner {
  readonly at: number;
  readonly cost: number;
}

/** A straight piece between two corners. */
interface Piece {
  readonly from: Corner;
  readonly to: Corner;
}

/**
 * Corners of the least of some lines over [low, high]; each line runs straight from corner to corner, left to right.
 * One line after another is laid under what is there, so that the work grows with corners x lines and not with the
 * square of all corners.
 */
export function lowerEnvelope(
  lines: readonly (readonly Corner[])[],
  low: number,
  high: number,
): Corner[] {
  let least: Piece[] = [];
  for (const line of lines) least = lower(least, within(line, low, high));
  const start = { at: low, cost: Math.min(...lines.map((line) => costAtStart(line, low))) };
  return [start, ...least.map((piece) => piece.to)];
}

/** The pieces of a line that lie within [low, high]. */
function within(line: readonly Corner[], low: number, high: number): Piece[] {
  const pieces: Piece[] = [];
  for (let i = 0; i + 1 < line.length; i++) {
    const piece = { from: line[i]!, to: line[i + 1]! };
    const from = cornerOn(piece, Math.max(low, piece.from.at));
    const to = cornerOn(piece, Math.min(high, piece.to.at));
    if (to.at > from.at) pieces.push({ from, to });
  }
  return pieces;
}

/** The lower of two lists of pieces wherever one of them stands; each list is in order and does not overlap itself. */
function lower(a: readonly Piece[], b: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  let last: Piece | null = null;
  // A piece that goes on stays one piece, or every place where another line bends would breed one.
  const push = (source: Piece, from: number, to: number): void => {
    if (to <= from) return;
    const end = cornerOn(source, to);
    if (source === last) out[out.length - 1] = { from: out.at(-1)!.from, to: end };
    else out.push({ from: cornerOn(source, from), to: end });
    last = source;
  };
  let [i, j] = [0, 0];
  let at = Number.NEGATIVE_INFINITY;
  while (i < a.length || j < b.length) {
    const [one, other] = [a[i], b[j]];
    at = Math.max(at, Math.min(one?.from.at ?? Infinity, other?.from.at ?? Infinity));
    const oneOn = one !== undefined && one.from.at <= at;
    const otherOn = other !== undefined && other.from.at <= at;
    const end = Math.min(nextOf(one, oneOn), nextOf(other, otherOn));
    if (oneOn && otherOn) pushLower(one, other, at, end, push);
    else if (oneOn) push(one, at, end);
    else if (otherOn) push(other, at, end);
    at = end;
    if (oneOn && one.to.at <= at) i++;
    if (otherOn && other.to.at <= at) j++;
  }
  return out;
}

const nextOf = (piece: Piece | undefined, on: boolean) =>
  piece === undefined ? Infinity : on ? piece.to.at : piece.from.at;

/** Of two pieces that both span [from, to], the lower, and where they cross first the one and then the other. */
function pushLower(
  one: Piece,
  other: Piece,
  from: number,
  to: number,
  push: (source: Piece, from: number, to: number) => void,
): void {
  const atFrom = costAt(other, from) - costAt(one, from);
  const atTo = costAt(other, to) - costAt(one, to);
  if (atFrom >= 0 && atTo >= 0) push(one, from, to);
  else if (atFrom <= 0 && atTo <= 0) push(other, from, to);
  else {
    const cross = from + ((to - from) * atFrom) / (atFrom - atTo);
    const [first, second] = atFrom > 0 ? [one, other] : [other, one];
    push(first, from, cross);
    push(second, cross, to);
  }
}

function cornerOn(piece: Piece, at: number): Corner {
  if (at === piece.from.at) return piece.from;
  if (at === piece.to.at) return piece.to;
  return { at, cost: costAt(piece, at) };
}

const costAt = ({ from, to }: Piece, at: number) =>
  at === to.at ? to.cost : from.cost + ((to.cost - from.cost) * (at - from.at)) / (to.at - from.at);

/** Cost of a line at the left end of the range, infinite where it is not there. */
function costAtStart(line: readonly Corner[], low: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < line.length; i++) {
    const [from, to] = [line[i]!, line[i + 1]];
    if (Math.abs(from.at - low) <= tinyKwh) best = Math.min(best, from.cost);
    else if (to !== undefined && from.at < low && low < to.at)
      best = Math.min(best, costAt({ from, to }, low));
  }
  return best;
}
