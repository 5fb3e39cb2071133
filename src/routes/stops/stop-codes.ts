import type { QuestionId } from '#compiled/question-ids.js';
import type { Answer } from '../../interview/answers';

/** Who can settle whether a route is possible after all. */
export type Settler =
  | 'household'
  | 'owner'
  | 'association'
  | 'electrician'
  | 'gas-company'
  | 'helper'; // a neighbor or a relative

/** Why a route is closed: what it rests on, and what would have to be true. */
export interface StopKind {
  /** The questions whose answers decide it. */
  readonly asks: readonly QuestionId[];
  /** Nobody told it: the careful branch closes the route until it is known. */
  readonly open: boolean;
  /** The answers under which it would not stand (ticks are added to those told), and who settles it; null: it cannot change. */
  readonly opens: {
    readonly by: Readonly<Partial<Record<QuestionId, Answer>>>;
    readonly settles: Settler;
  } | null;
}

type Opens = NonNullable<StopKind['opens']>;

const never = (...asks: QuestionId[]) => ({ asks, open: false, opens: null }) as const;
const told = <O extends Opens>(opens: O, ...asks: QuestionId[]) =>
  ({ asks, open: false, opens }) as const;
const unknown = <O extends Opens | null>(opens: O, ...asks: QuestionId[]) =>
  ({ asks, open: true, opens }) as const;

const openPlace = { by: { 'engine-place': 'open-20ft' }, settles: 'household' } as const;
// Of the places the rules allow, the one in the cold: the careful end of what a battery gives.
const batteryOutside = { by: { 'battery-place': 'outside-wall' }, settles: 'household' } as const;
const ownersWord = { by: { permissions: ['landlord-ok'] }, settles: 'owner' } as const;
const associationsWord = {
  by: { permissions: ['association-ok'] },
  settles: 'association',
} as const;
// Of the size that is assumed, east or west and half in the shade: the lean end of a roof worth using.
const someRoof = {
  by: { 'roof-face': 'east-west', 'roof-shade': 'half' },
  settles: 'household',
} as const;

/** Every reason that closes a route. */
export const stopKinds = {
  'generator-at-apartment': never('home-kind'),
  'generator-place-unknown': unknown(openPlace, 'engine-place'),
  'generator-place-too-close': told(openPlace, 'engine-place'),
  'generator-place-enclosed': told(openPlace, 'engine-place'),
  'generator-place-none': never('engine-place'),
  'association-bars-generator': told(associationsWord, 'association-rule', 'permissions'),
  'nobody-runs-it': told({ by: { operators: 'one' }, settles: 'helper' }, 'operators'),
  'gas-source-unknown': unknown(
    { by: { 'gas-supply': 'town-gas' }, settles: 'gas-company' },
    'gas-supply',
  ),
  'gas-unknown': unknown(
    { by: { 'gas-supply': 'town-gas' }, settles: 'gas-company' },
    'gas-supply',
  ),
  'gas-tank-unknown': unknown(
    { by: { 'gas-supply': 'propane-tank' }, settles: 'household' },
    'gas-supply',
  ),
  'gas-none': never('gas-supply'),
  'wiring-of-the-building': never('home-kind'),
  'owner-not-asked': told(ownersWord, 'home-tenure', 'permissions'),
  'owner-unknown': unknown(
    { by: { 'home-tenure': 'own' }, settles: 'household' },
    'home-tenure',
    'permissions',
  ),
  'panel-in-trouble': told(
    { by: { 'panel-signs': ['none'] }, settles: 'electrician' },
    'panel-signs',
  ),
  'battery-place-unknown': unknown(batteryOutside, 'battery-place'),
  'battery-place-none': never('battery-place'),
  'battery-in-living-space': told(batteryOutside, 'battery-place'),
  'battery-below-flood': told(batteryOutside, 'battery-place', 'flood-history'),
  'roof-unknown': unknown(someRoof, 'roof-face', 'roof-area'),
  'roof-full-or-unknown': unknown(someRoof, 'roof-face', 'roof-area'),
  'roof-none': never('roof-face'),
  'roof-of-another': never('home-tenure', 'home-kind'),
  'roof-too-small': never('roof-area'),
  'no-vehicle': never('own-sources'),
  'vehicle-unknown': unknown(null, 'own-sources'),
  'vehicle-too-small': never('vehicle-watts'),
  'own-standby-fuel-unknown': unknown(null, 'engine-fuel'),
  'own-battery-too-weak': never('battery-kwh', 'battery-kw'),
  'portable-carries-nothing': never('must-run'),
  'standby-carries-nothing': never('must-run'),
  'no-inverter-starts-it': never('must-run'),
  'nothing-plugs-in': never('must-run'),
  'no-single-job': never('must-run'),
  'nothing-must-run': never('must-run'),
  'must-run-unknown': unknown(null, 'must-run'),
} as const satisfies Readonly<Record<string, StopKind>>;

export type StopCode = keyof typeof stopKinds;

/** Of these, what can change: a route closed by nothing else is possible if. */
export type ConditionCode = {
  [Code in StopCode]: (typeof stopKinds)[Code]['opens'] extends null ? never : Code;
}[StopCode];

export const stopKindOf = (code: StopCode): StopKind => stopKinds[code];
