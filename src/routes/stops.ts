import type { ChoiceId } from '#compiled/question-ids.js';
import { toldToFreeze } from '../home/battery-place';
import { type GasHere, gasHere } from '../home/gas-here';
import type { Home, Load } from '../home/home';
import type { Stop } from './stop';
import type { StopCode } from './stop-codes';

/** Why a generator cannot stand here; empty when there is an open place 20 ft from every opening. */
export function generatorStops(home: Home): Stop[] {
  const { facts } = home;
  if (facts.is('home-kind', 'apartment')) return [{ code: 'generator-at-apartment' }];
  if (!facts.told('engine-place')) return [{ code: 'generator-place-unknown' }];
  const place = facts.choice('engine-place');
  return place === null || place === 'open-20ft' ? [] : [{ code: wrongPlaces[place] }];
}

const wrongPlaces: Readonly<Record<Exclude<ChoiceId<'engine-place'>, 'open-20ft'>, StopCode>> = {
  none: 'generator-place-none',
  'garage-shed': 'generator-place-enclosed',
  'porch-carport': 'generator-place-enclosed',
  'open-closer': 'generator-place-too-close',
};

/** Why nothing here feeds a generator that starts by itself; where that is only not known, it says so. */
export function gasStops({ facts }: Home): Stop[] {
  const code = facts.applies('gas-supply') ? gasReasons[gasHere(facts)] : null;
  return code === null ? [] : [{ code }];
}

const gasReasons: Readonly<Record<GasHere, StopCode | null>> = {
  street: null,
  tank: null,
  some: 'gas-source-unknown',
  none: 'gas-none',
  unknown: 'gas-unknown',
};

/** Why nobody here could run a generator by hand. */
export function handStops(home: Home): Stop[] {
  return home.facts.is('operators', 'none') ? [{ code: 'nobody-runs-it' }] : [];
}

/** Why nothing may be wired to this house yet. */
export function wiringStops(home: Home): Stop[] {
  const { facts } = home;
  const stops: Stop[] = [];
  if (facts.is('home-kind', 'apartment')) stops.push({ code: 'wiring-of-the-building' });
  if (facts.is('home-tenure', 'rent') && !facts.has('permissions', 'landlord-ok')) {
    stops.push({ code: facts.told('home-tenure') ? 'owner-not-asked' : 'owner-unknown' });
  }
  if (facts.has('panel-signs', 'heat-or-buzz', 'burn-or-rust', 'covers-missing')) {
    stops.push({ code: 'panel-in-trouble' });
  }
  return stops;
}

/** What an electrician must settle before anything is wired. */
export function wiringIfs(home: Home): string[] {
  const { facts } = home;
  const ifs = ['a licensed electrician does the wiring, with a permit and an inspection'];
  if (facts.open('main-amps')) ifs.push('the size of the main breaker is read off');
  if (facts.open('panel-signs')) ifs.push('the panel is found sound');
  if (facts.is('panel-kind', 'split-bus', 'fuses', 'no-main')) {
    ifs.push('the electrician finds a way to connect to this kind of panel, or replaces it');
  } else if (facts.open('panel-kind')) ifs.push('the kind of panel is known');
  if (facts.has('panel-signs', 'known-bad-make', 'trips')) {
    ifs.push('the electrician clears or replaces the panel');
  }
  if (facts.is('home-tenure', 'association') && !facts.has('permissions', 'association-ok')) {
    ifs.push('the association agrees in writing');
  }
  return ifs;
}

/** Why a battery cannot be fixed here. */
export function batteryPlaceStops(home: Home): Stop[] {
  const { facts } = home;
  if (!facts.told('battery-place')) return [{ code: 'battery-place-unknown' }];
  if (facts.is('battery-place', 'nowhere')) return [{ code: 'battery-place-none' }];
  if (facts.is('battery-place', 'bedroom-living')) return [{ code: 'battery-in-living-space' }];
  const flooded = facts.told('flood-history') && facts.is('flood-history', 'inside');
  return flooded && facts.is('battery-place', 'basement') ? [{ code: 'battery-below-flood' }] : [];
}

/** What must hold for the place of a fixed battery. */
export function batteryPlaceIfs(home: Home): string[] {
  const { facts } = home;
  const ifs: string[] = [];
  const outdoors = facts.is('battery-place', 'shed-unheated', 'detached', 'outside-wall');
  if (toldToFreeze(facts) || (outdoors && home.site.coldF < 32)) {
    ifs.push('the battery has its own heater, for it must not be charged below 32 °F');
  }
  if (facts.is('battery-place', 'attached-garage')) {
    ifs.push('it is safe from cars, and the building department agrees with the place');
  }
  if (!facts.is('flood-history', 'never')) ifs.push('it hangs above the highest water known here');
  return ifs;
}

/** Who must agree before a portable generator burns from the house tank. */
export function fuelIfs(home: Home, fuel: string): string[] {
  if (fuel !== 'propane' || !home.facts.is('gas-supply', 'propane-tank')) return [];
  return ['a gas fitter agrees to feed the generator from the house tank', ...tankIfs(home)];
}

/** A rented tank is its dealer's, and so is one of which nobody knows the owner. */
export function tankIfs({ facts }: Home): string[] {
  if (!facts.is('gas-supply', 'propane-tank')) return [];
  return facts.told('propane-tank-owner') && facts.is('propane-tank-owner', 'owned')
    ? []
    : [
        'the dealer who owns the propane tank agrees in writing to the generator on it, and to fill it before a storm',
      ];
}

/** What must be true of loads that are fed by cord: each by a plug of its own. */
export function plugIfs(loads: readonly Load[]): string[] {
  const has = (id: string) => loads.some((load) => load.id === id);
  return [
    ...(has('sump') ? ['the sump pump has a plug of its own that a cord can reach'] : []),
    ...(has('lights-led') ? ['there are lamps with a plug, for ceiling lights stay dark'] : []),
  ];
}
