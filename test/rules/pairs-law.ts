import { byRoute, pair } from './pairs';

const inlet = { kinds: ['engine-inlet'] } as const;

/** Permits, consent, money and trust. */
export const lawPairs = [
  pair('rehearsal-panel', { 'panel-kind': 'fuses' }, inlet),
  byRoute('rehearse-once', ['power-pack']),
  byRoute('estimates-only', ['engine-inlet']),
  byRoute('permit-inspection', ['standby-engine']),
  pair('utility-approval', { permissions: ['none'] }, { kinds: ['battery-solar'] }),
  pair('insurer-told', { permissions: ['none'] }, inlet),
  pair(
    'landlord-consent',
    { 'home-tenure': 'rent' },
    { twin: { 'home-tenure': 'rent', permissions: ['landlord-ok'] } },
  ),
  pair(
    'association-consent',
    { 'home-tenure': 'association' },
    { twin: { 'home-tenure': 'association', permissions: ['association-ok'] } },
  ),
  byRoute('ended-credit', ['battery-solar']),
  byRoute('compare-bids', ['standby-engine']),
  pair(
    'little-is-enough',
    { 'outage-often': 2, 'outage-longest': 4 },
    { twin: { 'outage-often': 2, 'outage-longest': 40 } },
  ),
];
