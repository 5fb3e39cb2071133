const spare: Float64Array<ArrayBuffer>[] = [];
/** More are not kept. */
const MOST = 3;

/**
 * An array of `count` numbers, left over from earlier work where one is at hand. It holds whatever was written there
 * before: the borrower writes every place. Fresh memory for every hour of a hundred years takes longer than a pass.
 */
export function borrowHours(count: number): Float64Array<ArrayBuffer> {
  const at = spare.findIndex((hours) => hours.length === count);
  return at < 0 ? new Float64Array(count) : spare.splice(at, 1)[0]!;
}

/** Give back what was borrowed, once nothing reads it any more. */
export function giveBack(...hours: readonly Float64Array<ArrayBuffer>[]): void {
  spare.push(...hours);
  spare.splice(0, spare.length - MOST);
}
