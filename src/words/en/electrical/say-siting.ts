import type { GeneratorSitingWhy } from '../../../physics/siting/generator-siting';
import type { PlainSiting, Siting } from '../../../plan/electrical/siting-point';

const plain: Readonly<Record<PlainSiting, string>> = {
  'battery-place-not-known':
    'No place for the battery is known. The building department agrees to one before anything is bought.',
  'battery-signs':
    'Signs: where each source and its disconnect is, at the service and at the source.',
  'battery-disconnect':
    'Battery disconnect in easy reach, outside for a home; from 2023 an emergency shutdown that shows on and off.',
  'battery-listed': 'Listed to UL 9540; the installer shows the listing and the fire-test report.',
  'heat-detector':
    'A heat detector joined to the smoke alarms, for a smoke alarm is seldom listed for a garage.',
  'smoke-alarm': 'A smoke alarm in the same space, joined to the others.',
  'finished-walls':
    'Finished or noncombustible walls and ceiling; bare wood framing gets 5/8 in Type X gypsum (from memory).',
  'flooded-basement': 'Water has been inside, or it is not known: not in the basement.',
  'above-high-water': 'Above the highest water known and the local flood level.',
  'co-alarms':
    'Carbon monoxide alarms with batteries on each floor and by the bedrooms before it first runs.',
  noise: 'Noise at the lot line and quiet hours: ask the town.',
  'stop-outside': 'A stop for the generator outside, in easy reach and labeled.',
  'propane-outdoors':
    'Propane outdoors, upright, valve shut when not in use; the supplier agrees to the generator on its tank.',
  'rapid-shutdown':
    'Rapid shutdown of the roof panels from outside: 30 V or less within 30 s outside the array, 80 V inside it.',
};

/** What a place needs, or what stands against it: "Signs: where each source and its disconnect is." */
export function saySiting(siting: Siting): string {
  switch (siting.code) {
    case 'unit-too-large':
      return `One unit over ${siting.limit} kWh falls under the commercial rules.`;
    case 'place-not-allowed':
      return 'No large battery in a bedroom, a closet that opens into one, or a living space.';
    case 'units-too-close':
      return `Between two units: ${siting.limit} in, unless a fire test (UL 9540A) shows that less is enough.`;
    case 'too-near-opening':
      return `From doors and windows that open into the home: ${siting.limit} in. Measure it on site.`;
    case 'needs-vehicle-protection':
      return `Where a car can reach it: underside ${siting.limit} in or more above the floor, or a barrier.`;
    case 'place-over-limit':
      return `More than the ${siting.limit} kWh allowed in this kind of place.`;
    case 'total-check-local':
      return 'Some places cap the whole home: ask the fire department.';
    case 'air-range':
      return `${air(siting)}; the maker's range must cover it.`;
    case 'charging-below-freezing':
      return `${air(siting)}, and in ${siting.coldMonths} months a usual night is below ${siting.leastF} °F. A lithium battery must not be charged below ${siting.leastF} °F: a unit with its own heater that holds charging back, or a warmer place.`;
    case 'generator-distance':
      return `Generator: ${siting.leastFt} ft from every door, window and vent, the neighbors' too (${generatorWhy(siting.why, siting.leastFt)}). Exhaust points away; nothing with a roof over it.`;
    case 'gasoline-kept': {
      const over = siting.overGal === null ? '' : `, and ${siting.overGal} gal are kept`;
      return `Gasoline: in cans of ${siting.canGal} gal or less, never in the home; ${siting.totalGal} gal is a usual limit, many places allow less${over}.`;
    }
    case 'roof-paths':
      return `On the roof: paths of ${siting.pathIn} in for firefighters and a strip at the ridge; none below an escape window. The fire department decides.`;
    default:
      return plain[siting.code];
  }
}

const air = ({ coldF, hotF }: { coldF: number; hotF: number }) =>
  `The air goes from ${Math.round(coldF)} to ${Math.round(hotF)} °F over a usual year`;

function generatorWhy(why: GeneratorSitingWhy, leastFt: number): string {
  switch (why) {
    case 'indoors':
      return 'exhaust kills indoors, doors open or not';
    case 'under-roof':
      return 'a roof holds the exhaust';
    case 'not-known':
      return 'where it stands or how far the openings are is not known';
    case 'far-enough':
      return `${leastFt} ft or more from every opening`;
    case 'too-near':
      return `nearer than ${leastFt} ft to an opening`;
  }
}
