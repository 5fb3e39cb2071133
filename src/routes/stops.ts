import { toldToFreeze } from '../home/battery-place';
import { type GasHere, gasHere } from '../home/gas-here';
import type { Home, Load } from '../home/home';
import { notKnown, type Stop } from './stop';

/** Why a generator cannot stand here; empty when there is an open place 20 ft from every opening. */
export function generatorStops(home: Home): (Stop | string)[] {
  const { facts } = home;
  if (facts.is('home-kind', 'apartment')) {
    return [
      'a generator cannot run at an apartment: its exhaust kills, and a balcony counts as indoors',
    ];
  }
  if (!facts.told('engine-place')) {
    return [
      notKnown(
        'we do not know of an open place outdoors at least 20 feet from every door, window and vent; find one first',
      ),
    ];
  }
  if (facts.is('engine-place', 'open-20ft')) return [];
  return [
    "there is no open place outdoors at least 20 feet from every door, window and vent, yours and the neighbors'",
  ];
}

/** Why nothing here feeds a generator that starts by itself; where that is only not known, it says so. */
export function gasStops({ facts }: Home): (Stop | string)[] {
  return facts.applies('gas-supply') ? gasReasons[gasHere(facts)] : [];
}

const gasReasons: Readonly<Record<GasHere, (Stop | string)[]>> = {
  street: [],
  tank: [],
  some: [
    notKnown(
      'you burn gas, but we do not know whether it comes from the street or from a tank; find out first',
    ),
  ],
  none: ['there is no gas from the street and no propane tank here'],
  unknown: [notKnown('we do not know whether gas or a propane tank is here; find out first')],
};

/** Why nobody here could run a generator by hand. */
export function handStops(home: Home): string[] {
  return home.facts.is('operators', 'none')
    ? ['nobody here can lift, start and refuel a generator and work the breakers']
    : [];
}

/** Why nothing may be wired to this house yet. */
export function wiringStops(home: Home): (Stop | string)[] {
  const { facts } = home;
  const stops: (Stop | string)[] = [];
  if (facts.is('home-kind', 'apartment')) stops.push('the wiring belongs to the building');
  if (facts.is('home-tenure', 'rent') && !facts.has('permissions', 'landlord-ok')) {
    stops.push(
      facts.told('home-tenure')
        ? "you rent: wiring needs the owner's consent in writing"
        : notKnown(
            "we do not know whether the home is yours; a rented one needs the owner's consent in writing before anything is wired",
          ),
    );
  }
  if (facts.has('panel-signs', 'heat-or-buzz', 'burn-or-rust', 'covers-missing')) {
    stops.push('the electrical panel shows signs of trouble: an electrician must clear it first');
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
export function batteryPlaceStops(home: Home): (Stop | string)[] {
  const { facts } = home;
  if (!facts.told('battery-place')) {
    return [
      notKnown('we do not know of a place for a battery that the rules allow; find one first'),
    ];
  }
  if (facts.is('battery-place', 'nowhere')) return ['there is no place for a fixed battery'];
  if (facts.is('battery-place', 'bedroom-living')) {
    return ['a battery may not be fixed in a bedroom or living space'];
  }
  if (
    facts.is('battery-place', 'basement') &&
    facts.is('flood-history', 'inside') &&
    facts.told('flood-history')
  ) {
    return ['water has been in the house: a battery in the basement would be flooded'];
  }
  return [];
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
