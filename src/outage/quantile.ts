import { requireWithin } from '../quantity/require-within';

/**
 * The least of the values that at least `share` of them do not exceed: with 0.9, nine in ten of them
 * are truly covered. No interpolation. `null` for no values. The array is reordered.
 */
export function quantileInPlace(values: Float64Array, share: number): number | null {
  requireWithin('share', share, { above: 0, atMost: 1, unit: '(share)' });
  if (values.length === 0) return null;
  // 0.9 * 10 must give 9, not 9.000000000000002
  return select(values, Math.ceil(share * values.length - 1e-9) - 1);
}

/** The k-th least value, by quickselect (Hoare 1961): linear time on average, and sorts nothing more. */
function select(values: Float64Array, k: number): number {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const pivot = medianOfThree(values[low]!, values[(low + high) >> 1]!, values[high]!);
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const swap = values[i]!;
      values[i++] = values[j]!;
      values[j--] = swap;
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else break;
  }
  return values[k]!;
}

function medianOfThree(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
