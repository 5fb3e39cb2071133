import type { Home } from '../../home/home';
import { hasFixedGenerator } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { type GeneratorSpot, generatorSiting } from '../../physics/siting/generator-siting';
import type { Route } from '../../routes/route';
import { fuelStorage } from '../../tables/fuel-storage';
import { namedValue } from '../../tables/named-values';
import { roofPathways } from '../../tables/roof-pathways';
import { sitingDistances } from '../../tables/siting-distances';
import { batterySiting } from './battery-siting';
import { hasGenerator, isFixedBattery } from './route-traits';

/** One thing to check about where the equipment stands. */
export interface SitingPoint {
  /** `no`: not so. `ask`: the department or a measurement decides. `needed`: must be there. `kept`: as answered, the distance is kept. */
  readonly verdict: 'no' | 'ask' | 'needed' | 'kept';
  readonly says: string;
  readonly cite: string;
}

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
  const { verdict, reason } = generatorSiting({
    kind,
    spot: spots[told] ?? null,
    nearestOpeningFt,
    leastFt,
  });
  const points: SitingPoint[] = [
    {
      verdict: verdict === 'far-enough' ? 'kept' : verdict,
      says: `Generator: ${leastFt} ft from every door, window and vent, the neighbors' too (${reason}). Exhaust points away; nothing with a roof over it.`,
      cite: namedValue(sitingDistances, `${kind}-engine-to-home`).source ?? 'CPSC',
    },
    {
      verdict: 'needed',
      says: 'Carbon monoxide alarms with batteries on each floor and by the bedrooms before it first runs.',
      cite: 'CPSC; UL 2034',
    },
    {
      verdict: 'ask',
      says: 'Noise at the lot line and quiet hours: ask the town.',
      cite: 'local ordinance',
    },
  ];
  if (kind === 'standby') {
    points.push({
      verdict: 'needed',
      says: 'A stop for the generator outside, in easy reach and labeled.',
      cite: 'NEC 2020 445.18(D), 2023 445.19(C)',
    });
  }
  return points;
}

function fuelPoints(home: Home, route: Route): SitingPoint[] {
  if (!hasGenerator(route) || route.fuel === null) return [];
  const amount = (id: string) => namedValue(fuelStorage, id).value;
  if (route.fuel.fuel === 'gasoline') {
    const most = amount('gasoline-total-gal');
    const kept = home.facts.told('gasoline-gallons')
      ? home.facts.number('gasoline-gallons')!
      : null;
    const over = kept !== null && kept > most;
    return [
      {
        verdict: over ? 'no' : 'needed',
        says: `Gasoline: in cans of ${amount('gasoline-can-gal')} gal or less, never in the home; ${most} gal is a usual limit, many places allow less${over ? `, and ${kept} gal are kept` : ''}.`,
        cite: 'usual fire-code limit, from memory; the fire department decides',
      },
    ];
  }
  if (route.fuel.fuel !== 'propane') return [];
  return [
    {
      verdict: 'needed',
      says: 'Propane outdoors, upright, valve shut when not in use; the supplier agrees to the generator on its tank.',
      cite: 'NFPA 58',
    },
  ];
}

function shutOffPoints(route: Route): SitingPoint[] {
  const points: SitingPoint[] = [];
  if (isFixedBattery(route)) {
    points.push(
      {
        verdict: 'needed',
        says: 'Battery disconnect in easy reach, outside for a home; from 2023 an emergency shutdown that shows on and off.',
        cite: 'NEC 2020 480.7(B), 706.15(A); 2023 706.15(B)',
      },
      {
        verdict: 'needed',
        says: 'Signs: where each source and its disconnect is, at the service and at the source.',
        cite: 'NEC 702.7, 705.10, 706.15(C)',
      },
    );
  }
  if (route.solarKw !== null) {
    const [strip] = roofPathways.rows;
    points.push(
      {
        verdict: 'needed',
        says: `On the roof: paths of ${strip!.pathwayIn} in for firefighters and a strip at the ridge; none below an escape window. The fire department decides.`,
        cite: 'IRC R324.6, from memory',
      },
      {
        verdict: 'needed',
        says: 'Rapid shutdown of the roof panels from outside: 30 V or less within 30 s outside the array, 80 V inside it.',
        cite: 'NEC 690.12 (2017 on)',
      },
    );
  }
  return points;
}
