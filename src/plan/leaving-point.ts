import type { Home } from '../home/home';
import { atRisk } from '../rules/when/at-risk';
import { type LifeFirst, lifeFirst } from './life-first';

/** When to go, and why then. */
export type LeavingLine = AnybodyLine | PersonLine;

type AnybodyLine =
  | { readonly code: PlainLine }
  /** `careful`: nobody told how many roads there are. */
  | { readonly code: 'one-road'; readonly careful: boolean };

export type PlainLine =
  | 'order-or-danger'
  | 'co-alarm'
  | 'room-limits'
  | 'half-used-up'
  | 'powered-place'
  | 'choose-a-place'
  | 'pets-go-along'
  | 'animals-outside';

/** For a person whose life hangs on a device, or who is made ill sooner than others. */
export type PersonLine =
  | { readonly code: 'device'; readonly first: LifeFirst }
  | {
      readonly code: 'cold' | 'heat';
      /** Nobody told whether such a person is here. */
      readonly careful: boolean;
      /** Who waits for the second figure may find the road closed. */
      readonly oneRoad: boolean;
    };

/** When to go, whatever is still running. Every plan has these lines. */
export function leavingPoint(home: Home): LeavingLine[] {
  return [
    { code: 'order-or-danger' },
    ...oneRoad(home),
    { code: 'co-alarm' },
    ...leavingForPeople(home),
    ...(someoneAtRisk(home) ? [] : [{ code: 'room-limits' as const }]),
    { code: 'half-used-up' },
    { code: hasPlace(home) ? 'powered-place' : 'choose-a-place' },
    ...animalLines(home),
  ];
}

const isOneRoad = ({ facts }: Home) => facts.told('road-out') && facts.is('road-out', 'one');

/** A road that can close is left by before it does. */
function oneRoad(home: Home): LeavingLine[] {
  if (isOneRoad(home)) return [{ code: 'one-road', careful: false }];
  return mayBeOneRoad(home) ? [{ code: 'one-road', careful: true }] : [];
}

/** Nobody told how many there are, or whether it matters here. */
function mayBeOneRoad({ facts }: Home): boolean {
  if (facts.applies('road-out')) return facts.open('road-out');
  return facts.open('can-leave') || facts.open('hazards');
}

/** The leaving place takes the animals too, or somebody looks after those that stay. */
function animalLines({ facts }: Home): LeavingLine[] {
  const has = (id: 'pets' | 'stay-outside') => facts.told('animals') && facts.has('animals', id);
  return [
    ...(has('pets') ? [{ code: 'pets-go-along' as const }] : []),
    ...(has('stay-outside') ? [{ code: 'animals-outside' as const }] : []),
  ];
}

/** Empty without such a person. */
export function leavingForPeople(home: Home): PersonLine[] {
  const first = lifeFirst(home);
  return [
    ...(first === null ? [] : [{ code: 'device' as const, first }]),
    ...byRoom(home, 'cold'),
    ...byRoom(home, 'heat'),
  ];
}

function byRoom(home: Home, code: 'cold' | 'heat'): PersonLine[] {
  const risk = atRisk(home, code);
  return risk === null ? [] : [{ code, careful: risk.careful, oneRoad: isOneRoad(home) }];
}

/** By cold or by heat, by age or by illness; not known counts as yes. */
function someoneAtRisk(home: Home): boolean {
  return atRisk(home, 'cold') !== null || atRisk(home, 'heat') !== null;
}

const hasPlace = ({ facts }: Home) =>
  facts.told('leave-place') && facts.is('leave-place', 'powered-place');
