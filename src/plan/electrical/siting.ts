import type { Home } from '../../home/home';
import { hasFixedGenerator } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { type GeneratorSpot, generatorSiting } from '../../physics/siting/generator-siting';
import { reference } from '../../quantity/cite';
import type { Route } from '../../routes/route';
import { fuelStorage } from '../../tables/fuel-storage';
import { namedValue } from '../../tables/named-values';
import { roofPathways } from '../../tables/roof-pathways';
import { sitingDistances } from '../../tables/siting-distances';
import { batterySiting } from './battery-siting';
import { hasGenerator, isFixedBattery } from './route-traits';
import type { SitingPoint } from './siting-point';

/** Where battery, generator, fuel and panels may stand, with what each place needs. */
export function sitingOf(home: Home, route: Route): SitingPoint[] {
  return [
    ...batterySiting(home, route),
    ...generatorPoints(home, route),
    ...fuelPoints(home, route),
    ...shutOffPoints(route),
  ];
}

const spots: Readonly<Record<string, GeneratorSpot>> = {
  'open-20ft': 'outdoors',
  'open-closer': 'outdoors',
  'porch-carport': 'under-roof',
  'garage-shed': 'inside',
};

function generatorPoints(home: Home, route: Route): SitingPoint[] {
  if (!hasGenerator(route)) return [];
  const kind = hasFixedGenerator(traitsOf[route.kind]) ? 'standby' : 'portable';
  const leastFt = namedValue(sitingDistances, `${kind}-engine-to-home`).value;
  const told = home.facts.told('engine-place') ? String(home.facts.value('engine-place')) : '';
  // Paced off at 20 ft or more; for a fixed generator that is not yet the 25 ft asked.
  const nearestOpeningFt = told === 'open-20ft' ? 20 : told === 'open-closer' ? 0 : null;
  const { verdict, why } = generatorSiting({
    kind,
    spot: spots[told] ?? null,
    nearestOpeningFt,
    leastFt,
  });
  const points: SitingPoint[] = [
    {
      verdict: verdict === 'far-enough' ? 'kept' : verdict,
      code: 'generator-distance',
      leastFt,
      why,
      cite: namedValue(sitingDistances, `${kind}-engine-to-home`).source,
    },
    {
      verdict: 'needed',
      code: 'co-alarms',
      cite: [{ ref: 'CPSC' }, { ref: 'UL 2034' }],
    },
    {
      verdict: 'ask',
      code: 'noise',
      cite: ['local-ordinance'],
    },
  ];
  if (kind === 'standby') {
    points.push({
      verdict: 'needed',
      code: 'stop-outside',
      cite: reference('NEC 2020 445.18(D), 2023 445.19(C)'),
    });
  }
  return points;
}

function fuelPoints(home: Home, route: Route): SitingPoint[] {
  if (!hasGenerator(route) || route.fuel === null) return [];
  const amount = (id: string) => namedValue(fuelStorage, id).value;
  if (route.fuel.fuel === 'gasoline') {
    const totalGal = amount('gasoline-total-gal');
    const kept = home.facts.told('gasoline-gallons')
      ? home.facts.number('gasoline-gallons')!
      : null;
    const overGal = kept !== null && kept > totalGal ? kept : null;
    return [
      {
        verdict: overGal === null ? 'needed' : 'no',
        code: 'gasoline-kept',
        canGal: amount('gasoline-can-gal'),
        totalGal,
        overGal,
        cite: ['usual-fire-code-limit', 'fire-department-decides'],
      },
    ];
  }
  if (route.fuel.fuel !== 'propane') return [];
  return [
    {
      verdict: 'needed',
      code: 'propane-outdoors',
      cite: reference('NFPA 58'),
    },
  ];
}

function shutOffPoints(route: Route): SitingPoint[] {
  const points: SitingPoint[] = [];
  if (isFixedBattery(route)) {
    points.push(
      {
        verdict: 'needed',
        code: 'battery-disconnect',
        cite: reference('NEC 2020 480.7(B), 706.15(A), 2023 706.15(B)'),
      },
      {
        verdict: 'needed',
        code: 'battery-signs',
        cite: reference('NEC 702.7, 705.10, 706.15(C)'),
      },
    );
  }
  if (route.solarKw !== null) {
    const [strip] = roofPathways.rows;
    points.push(
      {
        verdict: 'needed',
        code: 'roof-paths',
        pathIn: strip!.pathwayIn,
        cite: [{ ref: 'IRC R324.6' }, 'from-memory'],
      },
      {
        verdict: 'needed',
        code: 'rapid-shutdown',
        cite: reference('NEC 690.12 (2017 on)'),
      },
    );
  }
  return points;
}
