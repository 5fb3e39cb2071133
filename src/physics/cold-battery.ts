/** Share of the capacity at 25 C that is there at a cell temperature. */
export interface ColdPoint {
  readonly cellC: number;
  readonly share: number;
}

/**
 * Share of the capacity left at a cell temperature, on straight lines between the given points, which
 * must rise in temperature. Beyond the warmest it stays; below the coldest the last line goes on, to 0.
 */
export function coldCapacity(cellC: number, points: readonly ColdPoint[]): number {
  if (points.length < 2) throw new RangeError(`cold capacity needs 2 points: ${points.length}`);
  const last = points.at(-1)!;
  if (cellC >= last.cellC) return last.share;
  const above = Math.max(
    1,
    points.findIndex((point) => point.cellC > cellC),
  );
  const high = points[above]!;
  const low = points[above - 1]!;
  const share =
    low.share + ((high.share - low.share) * (cellC - low.cellC)) / (high.cellC - low.cellC);
  return Math.max(0, share);
}

/**
 * 1 for each hour in which the cells may take charge, 0 where they are colder than `leastC`.
 * Lithium cells plate metal when charged below 0 C (32 F) and must not be; a heated battery may, as
 * long as its heater has power, and gives 1 everywhere.
 */
export function hoursItMayCharge(
  cellC: ArrayLike<number>,
  { leastC, heated }: { leastC: number; heated: boolean },
): Uint8Array {
  return Uint8Array.from(cellC, (c) => (heated || c >= leastC ? 1 : 0));
}
