/** What must be true, or be settled, before a route works, where it takes no figure. */
export type PlainIf =
  | 'above-high-water'
  | 'association-agrees'
  | 'backed-up-shown'
  | 'battery-heater'
  | 'charger-set'
  | 'co-alarms'
  | 'co-alarms-for-the-generator'
  | 'electrician-wires'
  | 'exhaust-aimed'
  | 'gas-fitter-confirms'
  | 'gas-fitter-feeds'
  | 'inlet-of-120'
  | 'lamps-with-plug'
  | 'main-read'
  | 'own-inlet-looked-at'
  | 'own-standby-tested'
  | 'own-switch-looked-at'
  | 'panel-cleared'
  | 'panel-kind-known'
  | 'panel-sound'
  | 'panels-behind-battery'
  | 'quiet-hours'
  | 'roof-checked'
  | 'safe-from-cars'
  | 'somebody-runs-it'
  | 'sump-plug'
  | 'tank-dealer-agrees'
  | 'utility-agrees'
  | 'vehicle-at-home'
  | 'vehicle-in-the-open'
  | 'vehicle-kept-at-home'
  | 'vehicle-may-feed-circuits'
  | 'way-onto-this-panel'
  | 'works-with-the-old-one';

/** What must be true before a route works; `words` says it. */
export type If =
  | PlainIf
  /** The share a battery keeps for outages, %; null where nobody told it. */
  | { readonly code: 'reserve-full'; readonly keptPercent: number | null }
  | { readonly code: 'roof-measured-again'; readonly roofFt2: number; readonly floorFt2: number };
