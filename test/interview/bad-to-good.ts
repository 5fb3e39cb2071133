/**
 * The lines of questions whose answers open a way to something deadly or calm a caution, from bad to good: who chooses
 * the first line too quickly takes the careful branch. Our judgment.
 */
export const badToGood: Readonly<Record<string, readonly string[]>> = {
  'co-alarm': ['none', 'some', 'every-floor'],
  cords: ['none', 'light', 'heavy'],
  'engine-connect': ['wall-outlet', 'not-connected', 'cords', 'inlet'],
  'engine-stood': ['garage-shed', 'porch-carport', 'open-closer', 'open-20ft', 'never-ran'],
  'engine-place': ['none', 'garage-shed', 'porch-carport', 'open-closer', 'open-20ft'],
  'battery-place': [
    'nowhere',
    'bedroom-living',
    'shed-unheated',
    'attached-garage',
    'basement',
    'utility-room',
    'outside-wall',
    'detached',
  ],
  'battery-kind': ['home-made', 'lead-acid', 'other-lithium', 'lfp'],
  'gas-supply': ['none', 'propane-tank', 'town-gas'],
  'gasoline-place': ['inside', 'attached-garage', 'detached-shed'],
  'fuel-refill': ['no', 'likely', 'sure'],
  'flood-history': ['inside', 'yard', 'never'],
  'phone-works': ['neither', 'landline', 'cell'],
  'can-leave': ['no', 'with-help', 'yes'],
  'leave-place': ['none', 'other-place', 'powered-place'],
  'heat-cold': ['both', 'cold', 'heat', 'neither'],
  'device-battery-tested': ['no', 'yes'],
  operators: ['none', 'one', 'two'],
  'solar-in-outage': ['never-tried', 'nothing', 'one-outlet', 'runs-house'],
  'who-works': ['friend', 'self', 'licensed'],
  'transfer-existing': ['not-known', 'none', 'manual-switch', 'interlock', 'automatic'],
  'panel-kind': ['no-main', 'fuses', 'split-bus', 'main-breaker'],
};

/** Lists of what is wrong or who is frail: "none of these" stands below all of it. */
export const noneLast = [
  'now-danger',
  'people-risk',
  'medical-devices',
  'access-lifts',
  'panel-signs',
  'wiring-signs',
];
