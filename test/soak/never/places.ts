import { hasFixedBattery, hasGenerator } from '../../../src/kinds/ask-traits';
import { traitsOf } from '../../../src/kinds/route-traits';
import type { Route } from '../../../src/routes/route';
import { english } from '../../../src/words/en';
import { electricalFor, faultsIf, type Held, type HeldOfRoutes, openRoutes } from '../seen';

const kinds = (routes: readonly Route[]) => routes.map((route) => route.kind);

/** No generator where no open place 20 ft off was told, nor at an apartment. */
export const generatorPlace: HeldOfRoutes = (seen) => {
  const { facts } = seen.plan.home;
  const flat = facts.is('home-kind', 'apartment');
  const open = facts.told('engine-place') && facts.is('engine-place', 'open-20ft');
  if (!flat && open) return null;
  const bad = openRoutes(seen).filter((route) => hasGenerator(traitsOf[route.kind]));
  return faultsIf(kinds(bad), 'a generator with no open place told');
};

/** No fixed battery in a bedroom, a living space, an unknown place or a flooded basement; one owned stays where it is. */
export const batteryPlace: HeldOfRoutes = (seen) => {
  const { facts } = seen.plan.home;
  const wet =
    facts.is('battery-place', 'basement') &&
    facts.told('flood-history') &&
    facts.is('flood-history', 'inside');
  const none =
    !facts.told('battery-place') || facts.is('battery-place', 'bedroom-living', 'nowhere');
  if (!wet && !none) return null;
  const bad = openRoutes(seen).filter((route) => hasFixedBattery(traitsOf[route.kind]));
  return faultsIf(kinds(bad), 'a fixed battery where it may not stand');
};

/** A lithium battery in a cold place comes with the word that it must not be charged below freezing. */
export const coldBattery: Held = (seen) => {
  const { facts, site } = seen.plan.home;
  const cold = facts.is('battery-place', 'outside-wall', 'shed-unheated', 'attached-garage');
  const routes = openRoutes(seen).filter((route) => hasFixedBattery(traitsOf[route.kind]));
  if (!cold || site.coldF >= 32 || routes.length === 0) return null;
  const bad = routes.filter((route) => {
    const said = electricalFor(seen, route).siting.map(english.forElectrician.siting);
    return !said.join(' ').includes('must not be charged below 32 °F');
  });
  return faultsIf(kinds(bad), 'charging in the cold is not warned of');
};

/** Nothing is wired in a rented home without consent, nor to a panel that shows trouble. */
export const wiring: HeldOfRoutes = (seen) => {
  const { facts } = seen.plan.home;
  const flat = facts.is('home-kind', 'apartment');
  const rented = facts.is('home-tenure', 'rent') && !facts.has('permissions', 'landlord-ok');
  const bad =
    facts.told('panel-signs') &&
    facts.has('panel-signs', 'heat-or-buzz', 'burn-or-rust', 'covers-missing');
  if (!flat && !rented && !bad) return null;
  const wired = openRoutes(seen).filter(({ kind }) =>
    ['inlet', 'circuits', 'house'].includes(traitsOf[kind].connection),
  );
  return faultsIf(
    kinds(wired).filter((kind) => kind !== 'own-battery'),
    'wired where nothing may be',
  );
};
