import type { ChoiceId } from '#compiled/question-ids.js';
import { toldToFreeze } from '../../home/battery-place';
import { type GasHere, gasHere } from '../../home/heat/gas-here';
import type { Home, Load } from '../../home/home';
import type { If } from './condition';
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
  'no-tank-known': 'gas-tank-unknown',
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
export function wiringIfs(home: Home): If[] {
  const { facts } = home;
  const ifs: If[] = ['electrician-wires'];
  if (facts.open('main-amps')) ifs.push('main-read');
  if (facts.open('panel-signs')) ifs.push('panel-sound');
  if (facts.is('panel-kind', 'split-bus', 'fuses', 'no-main')) {
    ifs.push('way-onto-this-panel');
  } else if (facts.open('panel-kind')) ifs.push('panel-kind-known');
  if (facts.has('panel-signs', 'known-bad-make', 'trips')) {
    ifs.push('panel-cleared');
  }
  if (facts.is('home-tenure', 'association') && !facts.has('permissions', 'association-ok')) {
    ifs.push('association-agrees');
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
export function batteryPlaceIfs(home: Home): If[] {
  const { facts } = home;
  const ifs: If[] = [];
  const outdoors = facts.is('battery-place', 'shed-unheated', 'detached', 'outside-wall');
  if (toldToFreeze(facts) || (outdoors && home.site.coldF < 32)) {
    ifs.push('battery-heater');
  }
  if (facts.is('battery-place', 'attached-garage')) {
    ifs.push('safe-from-cars');
  }
  if (!facts.is('flood-history', 'never')) ifs.push('above-high-water');
  return ifs;
}

/** Who must agree before a portable generator burns from the house tank. */
export function fuelIfs(home: Home, fuel: string): If[] {
  if (fuel !== 'propane' || !home.facts.is('gas-supply', 'propane-tank')) return [];
  return ['gas-fitter-feeds', ...tankIfs(home)];
}

/** A rented tank is its dealer's, and so is one of which nobody knows the owner. */
export function tankIfs({ facts }: Home): If[] {
  if (!facts.is('gas-supply', 'propane-tank')) return [];
  return facts.told('propane-tank-owner') && facts.is('propane-tank-owner', 'owned')
    ? []
    : ['tank-dealer-agrees'];
}

/** What must be true of loads that are fed by cord: each by a plug of its own. */
export function plugIfs(loads: readonly Load[]): If[] {
  const has = (id: string) => loads.some((load) => load.id === id);
  return [
    ...(has('sump') ? ['sump-plug' as const] : []),
    ...(has('lights-led') ? ['lamps-with-plug' as const] : []),
  ];
}
