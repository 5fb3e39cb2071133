/**
 * Share of an hour's sun on the level that comes from the whole sky and not the disc, 0 to 1.
 * `clearness` is the hour's sun over the same outside the air, 0 to 1.
 * Source: Erbs, Klein & Duffie 1982, Solar Energy 28(4), 293-302, eq. 1 (Duffie & Beckman 2.10.1).
 */
export function hourlyDiffuseShare(clearness: number): number {
  const k = clearness;
  if (k <= 0.22) return 1 - 0.09 * k;
  if (k > 0.8) return 0.165;
  return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)));
}

/**
 * The same share for a whole day. `sunsetHourAngleDeg` tells winter (81.4 degrees or less) apart.
 * Source: Erbs, Klein & Duffie 1982, eq. 4 and 5 (Duffie & Beckman 2.11.1).
 */
export function dailyDiffuseShare(clearness: number, sunsetHourAngleDeg: number): number {
  const k = clearness;
  if (sunsetHourAngleDeg <= 81.4) {
    if (k >= 0.715) return 0.143;
    return 1 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879)));
  }
  if (k >= 0.722) return 0.175;
  return 1 + k * (0.2832 + k * (-2.5557 + k * 0.8448));
}

/**
 * The same share for a monthly mean day, published for clearness 0.3 to 0.8: null outside.
 * Source: Erbs, Klein & Duffie 1982, eq. 6 and 7 (Duffie & Beckman 2.12.1).
 */
export function monthlyDiffuseShare(clearness: number, sunsetHourAngleDeg: number): number | null {
  const k = clearness;
  if (!(k >= 0.3 && k <= 0.8)) return null;
  if (sunsetHourAngleDeg <= 81.4) return 1.391 + k * (-3.56 + k * (4.189 + k * -2.137));
  return 1.311 + k * (-3.022 + k * (3.427 + k * -1.821));
}

/**
 * A share `share` with its odds made `odds` times as large, 0 to 1: the same law at a place with more,
 * or less, sun from the whole sky. At 1 the share stays as it is; 0 and 1 stay where they are.
 *
 *     s' = s p / (1 - s + s p)
 */
export function withOdds(share: number, odds: number): number {
  const scaled = share * odds;
  return scaled / (1 - share + scaled);
}
