/** One sloping face of a roof, as seen from above and from the ground. */
export interface RoofFace {
  name: string;
  /** Length along the eave, ft. */
  eaveFt: number;
  /** Depth from eave to ridge as seen from above (not along the slope), ft. */
  planDepthFt: number;
  /** 0 flat, 90 upright. */
  tiltDeg: number;
}

/** Tilt, degrees, of a roof that rises `rise` inches in 12. */
export function tiltOfPitch(rise: number): number {
  return (Math.atan2(rise, 12) * 180) / Math.PI;
}

/** How much larger a face is than its shadow at noon: 1 / cos(tilt). */
export function slopeFactor(tiltDeg: number): number {
  return 1 / Math.cos((tiltDeg * Math.PI) / 180);
}
