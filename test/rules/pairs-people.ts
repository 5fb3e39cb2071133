import { pair } from './pairs';

const oxygen = { 'medical-devices': ['oxygen-concentrator'] };
const ventilator = { 'medical-devices': ['ventilator'] };
const cpap = { 'medical-devices': ['cpap'] };
const ups = { 'own-sources': ['small-ups'] };

/** Danger now, health and getting out. */
export const peoplePairs = [
  pair('co-signs', { 'now-danger': ['unwell'] }),
  pair('gas-smell', { 'now-danger': ['gas-smell'] }),
  pair('water-and-electricity', { 'now-danger': ['water-electric'] }),
  pair('hot-panel', { 'panel-signs': ['heat-or-buzz'] }, { twin: { 'panel-signs': ['trips'] } }),
  pair('fallen-wire', { hazards: ['ice-snow'] }, { twin: { hazards: ['heat-wave'] } }),
  pair(
    'second-source',
    { ...oxygen, 'second-source': ['none'] },
    { twin: { ...oxygen, 'second-source': ['cylinders'] } },
  ),
  pair('leaving-point', ventilator, { twin: cpap }),
  pair('safe-hours', oxygen, { twin: { ...oxygen, 'device-safe-hours': 1 } }),
  pair(
    'device-gap',
    { ...oxygen, 'device-battery-hours': 0 },
    { twin: { ...oxygen, 'device-battery-hours': 3 }, kinds: ['standby-engine'] },
  ),
  pair('heart-pump', { 'medical-devices': ['heart-pump'] }, { twin: oxygen }),
  pair('ventilator-bag', ventilator, { twin: oxygen }),
  pair('oxygen-fire', oxygen, { twin: ventilator }),
  pair(
    'cylinder-hours',
    { ...oxygen, 'second-source': ['cylinders'] },
    { twin: { ...oxygen, 'second-source': ['other-place'] } },
  ),
  pair(
    'device-battery-untested',
    { ...ventilator, 'device-battery-hours': 6, 'device-battery-tested': 'no' },
    { twin: { ...ventilator, 'device-battery-hours': 6, 'device-battery-tested': 'yes' } },
  ),
  pair('list-is-notice', oxygen, { twin: { 'medical-devices': ['fridge-medicine'] } }),
  pair('rehearsal-life-device', oxygen, { twin: cpap, kinds: ['engine-inlet'] }),
  pair(
    'lift-stops',
    { 'access-lifts': ['elevator'] },
    { twin: { 'access-lifts': ['garage-door'] } },
  ),
  pair('medicine-cool', { 'medical-devices': ['fridge-medicine'] }, { twin: cpap }),
  pair('clean-power', cpap, { kinds: ['power-pack'] }),
  pair(
    'modified-sine',
    { ...cpap, ...ups, 'pack-wave': 'modified' },
    { twin: { ...cpap, ...ups, 'pack-wave': 'pure' } },
  ),
  pair('modified-sine', { ...cpap, ...ups }, { twin: { ...cpap, ...ups, 'pack-wave': 'pure' } }),
  pair('dialysis-plan', { 'medical-devices': ['dialysis'] }, { twin: oxygen }),
  pair(
    'tell-the-team',
    { ...oxygen, 'device-team': ['clinician'] },
    {
      twin: {
        ...oxygen,
        'device-team': ['clinician', 'supplier', 'power-company', 'fire-department'],
      },
    },
  ),
  pair('power-chair', { 'medical-devices': ['power-chair'] }, { twin: cpap }),
  pair(
    'door-release',
    { 'access-lifts': ['power-gate'] },
    { twin: { 'access-lifts': ['stairlift'] } },
  ),
  pair('help-to-leave', { 'can-leave': 'with-help' }),
  pair('no-place-to-go', { 'leave-place': 'none' }),
  pair(
    'place-may-be-dark',
    { ...oxygen, 'leave-place': 'other-place' },
    { twin: { ...oxygen, 'leave-place': 'powered-place' } },
  ),
  pair(
    'alarm-button',
    { 'people-risk': ['over-65'], 'phone-works': 'landline' },
    { twin: { 'people-risk': ['over-65'], 'phone-works': 'cell' } },
  ),
  pair(
    'mask-second-way',
    { ...cpap, 'second-source': ['none'] },
    { twin: { ...cpap, 'second-source': ['spare-batteries'] } },
  ),
  pair('cpap-nights', cpap, { twin: { 'medical-devices': ['nebuliser'] } }),
  pair('alone-check', { 'people-risk': ['alone-often'] }, { twin: { 'people-risk': ['over-65'] } }),
  pair('plan-is-private', cpap),
];
