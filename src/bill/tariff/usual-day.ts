/**
 * Share of a day's use in each hour, 0 to 23, of a home without electric heating, cooling or hot water. Hourly shapes
 * of ANSI/RESNET/ICC 301-2022 Addendum C table C.3 and of the Building America simulation protocols (2010), weighted
 * with the US residential end uses of 2022 (EIA). The sum is brought to 1 in use.
 */
const share = [
  0.0303, 0.0292, 0.0287, 0.0283, 0.0285, 0.0296, 0.0334, 0.0383, 0.0415, 0.0435, 0.0441, 0.0443,
  0.044, 0.0434, 0.0428, 0.045, 0.0484, 0.0535, 0.0568, 0.0586, 0.0584, 0.0527, 0.0427, 0.0342,
];

/** Hours of equal days that use `kwhPerDay` in the shape of an ordinary home; for a first look, not for a plan. */
export function usualDays({ kwhPerDay, days }: { kwhPerDay: number; days: number }): Float64Array {
  if (!(kwhPerDay >= 0)) throw new RangeError(`${kwhPerDay} kWh a day`);
  const sum = share.reduce((total, part) => total + part, 0);
  return Float64Array.from({ length: days * 24 }, (_, h) => (kwhPerDay * share[h % 24]!) / sum);
}
