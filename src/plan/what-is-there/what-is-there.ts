import type { Facts } from '../../home/facts';
import { warmOtherwise } from '../../home/heat/warm-otherwise';
import type { Home } from '../../home/home';
import { solarRunsHouse } from '../../home/solar/own-solar';
import { type Figure, figure } from '../../quantity/figure';
import { backsUp } from '../../routes/kinds/own-battery';
import { ownBattery } from '../../routes/own-battery';
import type { Route } from '../../routes/route';
import { type Built, classesOf, type NeedId, type ThingId, type ThingThere } from './thing';

/** Everything told that is there already, in the order in which it helps, with what makes it work in an outage. */
export function whatIsThere(home: Home, routes: readonly Route[]): ThingThere[] {
  return (Object.keys(finders) as ThingId[]).flatMap((id) => {
    const found = finders[id](home);
    return found === null ? [] : [{ id, ...found, builtOn: builtOn(id, routes) }];
  });
}

type Found = Omit<ThingThere, 'id' | 'builtOn'>;

const finders: Readonly<Record<ThingId, (home: Home) => Found | null>> = {
  battery: (home) => batteryThere(home, 'home-battery'),
  pack: (home) => batteryThere(home, 'power-pack'),
  solar: ({ facts }) =>
    has(facts, 'solar')
      ? found(size(facts, 'solar-kw', 'kW'), solarRunsHouse(facts) ? [] : ['island'])
      : null,
  generator: ({ facts }) =>
    has(facts, 'engine-portable')
      ? found(size(facts, 'engine-watts', 'W'), ['outdoors', 'alarm', 'fuel', ...connection(facts)])
      : null,
  standby: ({ facts }) =>
    has(facts, 'engine-standby')
      ? found(size(facts, 'engine-watts', 'W'), ['serviced', 'alarm', ...connection(facts)])
      : null,
  'vehicle-battery': ({ facts }) =>
    vehicle(facts) && batteryOnly(facts)
      ? found(size(facts, 'vehicle-kwh', 'kWh'), ['at-home', 'maker-allows'])
      : null,
  'vehicle-engine': ({ facts }) =>
    vehicle(facts) && !batteryOnly(facts)
      ? found(null, ['outdoors', 'alarm', 'at-home', 'maker-allows'])
      : null,
  switch: ({ facts }) =>
    told(facts, 'transfer-existing', 'manual-switch', 'interlock', 'automatic')
      ? found(null, ['looked-at'])
      : null,
  stove: ({ facts }) =>
    warmOtherwise(facts) || told(facts, 'heat-main', 'wood', 'gas-no-power')
      ? found(null, ['swept', 'alarm'])
      : null,
  water: ({ facts }) => {
    const gallons = size(facts, 'water-stored', 'gal');
    return gallons !== null && gallons.value > 0 ? found(gallons, ['fresh']) : null;
  },
  cords: ({ facts }) => (told(facts, 'cords', 'heavy') ? found(null, ['uncoiled']) : null),
  'thin-cords': ({ facts }) =>
    told(facts, 'cords', 'light') ? { ...found(null, []), counts: false } : null,
  ups: ({ facts }) =>
    has(facts, 'small-ups') ? { ...found(null, ['not-for-motors']), counts: false } : null,
};

const found = (of: Figure | null, needs: readonly NeedId[]): Found => ({
  size: of,
  ageYears: null,
  needs,
  counts: true,
});

/** Of pack and fixed battery one set of questions was asked; where both are there it speaks of the fixed one. */
function batteryThere(home: Home, as: 'home-battery' | 'power-pack'): Found | null {
  const { facts } = home;
  if (!has(facts, as)) return null;
  const fixed = as === 'home-battery';
  const asked = fixed || !has(facts, 'home-battery');
  const needs: NeedId[] = fixed ? (backsUp(home) ? ['charged'] : ['backed-panel']) : ['charged'];
  return {
    size: asked ? size(facts, 'battery-kwh', 'kWh') : null,
    ageYears: asked && facts.told('battery-years') ? facts.number('battery-years') : null,
    needs,
    counts: asked && ownBattery(home) !== null,
  };
}

/** Through a wall outlet, or nobody knows how: it needs a safe way in first. */
const connection = (facts: Facts): NeedId[] =>
  told(facts, 'engine-connect', 'inlet') ? ['looked-at'] : ['connection'];

type Question = Parameters<Facts['told']>[0];
type Owned =
  | 'home-battery'
  | 'power-pack'
  | 'solar'
  | 'engine-portable'
  | 'engine-standby'
  | 'small-ups';

const has = (facts: Facts, what: Owned) =>
  facts.told('own-sources') && facts.has('own-sources', what);

const vehicle = (facts: Facts) =>
  facts.told('own-sources') && facts.has('own-sources', 'ev-outlet', 'hybrid-outlet');

const batteryOnly = (facts: Facts) => told(facts, 'vehicle-kind', 'battery-only');

/** The question was answered, with one of these. */
function told(facts: Facts, id: Question, ...choices: readonly string[]): boolean {
  const value = facts.value(id);
  return facts.told(id) && typeof value === 'string' && choices.includes(value);
}

function size(facts: Facts, id: Question, unit: string): Figure | null {
  const value = facts.told(id) ? facts.number(id) : null;
  const source = { kind: 'told', is: 'told' } as const;
  return value === null ? null : figure({ value, unit, source });
}

/** Routes that use it as a part that is there, and buy something more. */
function builtOn(id: ThingId, routes: readonly Route[]): Built[] {
  const uses = ({ parts }: Route) =>
    parts.some((part) => part.year === 0 && classesOf[id].includes(part.equipmentClass));
  return routes
    .filter((route) => route.verdict !== 'cannot' && route.costUsd.value > 0 && uses(route))
    .map(({ kind, called, costUsd }) => ({ kind, called, usd: costUsd.value }));
}
