/** Why a route does not carry a load, with the figures it hangs on. The sentence is made where it is printed. */
export type WhyLeftOut =
  | { readonly code: PlainReason }
  /** More than one half of a 120/240 V generator gives: W for hours, VA for a start. */
  | { readonly code: 'half-too-small'; readonly halfWatts: number; readonly halfStartVa: number }
  /** More than the source runs with the rest; `startVa` is the high end of its start, null without a motor. */
  | { readonly code: 'too-hard'; readonly source: SourceName; readonly startVa: number | null };

/** Reasons that need no figure. */
export type PlainReason =
  | 'wall-outlet-only' // a heater that no cord and no pack may feed
  | 'wired-in'
  | 'wired-240' // the source gives 240 V, but a cord does not bring them
  | 'needs-240'
  | 'own-generator-120'
  | 'own-standby-120'
  | 'off-in-any-outage'
  | 'more-than-carried'
  | 'too-much-energy' // more kWh than a home battery holds for the goal
  | 'one-job-only'
  | 'too-hard-for-pack'
  | 'too-hard-for-vehicle';

/** What a route draws its power from. */
export type SourceName =
  | 'portable-generator'
  | 'own-generator'
  | 'standby-generator'
  | 'own-standby'
  | 'home-inverter'
  | 'battery-there';
