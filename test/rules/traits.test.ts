import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { routeKinds } from '../../src/kinds/route-kind';
import { type RouteTraits, traitsOf } from '../../src/kinds/route-traits';
import { findings, findingsOf } from '../../src/rules/find';
import { answeredHome } from './some-home';

/** The grave cautions each trait must bring, written out here and not read from the rules. */
const brings: readonly {
  readonly trait: string;
  readonly has: (of: RouteTraits) => boolean;
  readonly cautions: readonly string[];
}[] = [
  {
    trait: 'a battery to plug in',
    has: (of) => of.battery === 'plug-in',
    cautions: ['battery-smoke', 'flooded-lithium', 'charging-indoors'],
  },
  {
    trait: 'a battery fixed to the house',
    has: (of) => of.battery === 'fixed',
    cautions: [
      'battery-smoke',
      'flooded-lithium',
      'not-where-you-sleep',
      'storage-limits',
      'fire-detector',
      'above-flood',
      'outside-stop-battery',
      'utility-approval',
    ],
  },
  {
    trait: 'a portable generator',
    has: (of) => of.generator === 'portable',
    cautions: [
      'no-backfeed',
      'apartment-no-engine',
      'co-distance',
      'porch-carport',
      'engine-too-close',
      'co-alarm-first',
      'co-shutoff-no-substitute',
      'refuel-cool',
      'fuel-storage',
    ],
  },
  {
    trait: 'a generator fixed outdoors',
    has: (of) => of.generator === 'fixed',
    cautions: [
      'fixed-engine-exhaust',
      'co-alarm-first',
      'neighbors-openings',
      'outside-stop-engine',
    ],
  },
  {
    trait: 'a vehicle',
    has: (of) => of.vehicle,
    cautions: ['hybrid-starts-itself', 'battery-smoke', 'flooded-lithium', 'vehicle-house-ok'],
  },
  {
    trait: 'outlets and cords',
    has: (of) => of.connection === 'outlets',
    cautions: ['no-backfeed'],
  },
  {
    trait: 'an inlet',
    has: (of) => of.connection === 'inlet',
    cautions: ['interlock-order', 'panel-work-licensed', 'permit-inspection'],
  },
  {
    trait: 'wires to the house',
    has: (of) => ['inlet', 'circuits', 'house'].includes(of.connection),
    cautions: ['panel-work-licensed', 'permit-inspection', 'old-wiring-unknown', 'estimates-only'],
  },
  {
    trait: 'panels on the roof',
    has: (of) => of.roofSolar,
    cautions: ['solar-live', 'rapid-shutdown', 'roof-pathways'],
  },
];

/** Nothing of their own and nothing wrong: what shows comes from the route. */
const home = answeredHome({
  'own-sources': ['none'],
  'medical-devices': ['none'],
  'people-risk': ['none'],
  'heat-cold': 'neither',
});

function missing(of: RouteTraits, ids: readonly string[]): string[] {
  return brings
    .filter((one) => one.has(of))
    .flatMap((one) =>
      one.cautions.filter((id) => !ids.includes(id)).map((id) => `${one.trait}: ${id}`),
    );
}

describe('every caution of its traits', () => {
  test.each(routeKinds)('comes with %s', (kind) => {
    const ids = findings(home, [kind]).map((one) => one.id);
    expect(missing(traitsOf[kind], ids)).toEqual([]);
  });

  it('comes with any route that could be invented', () => {
    for (const of of everyTraits()) {
      const ids = findingsOf(home, [of]).map((one) => one.id);
      expect({ of, missing: missing(of, ids) }).toEqual({ of, missing: [] });
    }
  });

  it('stays away, but for what any home is told, where no route brings it', () => {
    const quiet = answeredHome({ 'own-sources': ['none'], 'home-kind': 'house' });
    const ids = findingsOf(quiet, [traitsOf.preparation]).map((one) => one.id);
    for (const id of ['porch-carport', 'charging-indoors', 'panel-work-licensed', 'solar-live'])
      expect(ids).not.toContain(id);
  });
});

/** Names of routes that are nothing else as well: `power-pack`, `vehicle` are also answers and parts. */
const namesOnly = routeKinds.filter(
  (kind) => !['preparation', 'power-pack', 'vehicle', 'standby-engine'].includes(kind),
);

test('no rule and nothing in the plan asks for a route by its name: ask its traits', () => {
  const named = ['src/rules', 'src/plan'].flatMap((room) =>
    readdirSync(room, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .flatMap((file) => {
        const text = readFileSync(join(room, file), 'utf8');
        return namesOnly
          .filter((kind) => text.includes(`'${kind}'`))
          .map((kind) => `${file}: ${kind}`);
      }),
  );
  expect(named).toEqual([]);
});

/** Every mix of traits that gives power. */
function everyTraits(): RouteTraits[] {
  const all: RouteTraits[] = [];
  for (const battery of ['none', 'plug-in', 'fixed'] as const)
    for (const generator of ['none', 'portable', 'fixed'] as const)
      for (const connection of ['outlets', 'inlet', 'circuits', 'house'] as const)
        for (const bits of [0, 1, 2, 3])
          all.push({
            battery,
            generator,
            connection,
            vehicle: (bits & 1) > 0,
            roofSolar: (bits & 2) > 0,
            automatic: connection === 'house',
            byHand: generator === 'portable',
            inverter: battery !== 'none',
            oneJob: false,
            owned: false,
          });
  return all;
}
