import { mustNotBeNegative } from '../../quantity/must-be';

export type GeneratorKind = 'portable' | 'standby';

export type GeneratorSpot =
  | 'outdoors'
  | 'under-roof' // porch, carport, breezeway
  | 'inside' // house, garage, basement, shed, crawl space, doors open or not
  | null; // not known

/** What decides it. */
export type GeneratorSitingWhy = 'indoors' | 'under-roof' | 'not-known' | 'far-enough' | 'too-near';

export interface GeneratorSiting {
  /** `no`: must not run there. `far-enough`: the distance is kept. `ask`: a fact is missing, or it is a fixed generator too near. */
  readonly verdict: 'no' | 'far-enough' | 'ask';
  readonly why: GeneratorSitingWhy;
}

/**
 * Whether a generator may run where it stands. Inside or under a roof: never. Portable and nearer than the least distance to
 * any opening, the neighbor's too: no. Fixed and nearer: the installer must show where the exhaust goes. Not known: ask.
 * `leastFt` is 20 ft for portable generators (CPSC) and 25 ft for fixed ones (CPSC 2025).
 */
export function generatorSiting(given: {
  kind: GeneratorKind;
  spot: GeneratorSpot;
  nearestOpeningFt: number | null;
  leastFt: number;
}): GeneratorSiting {
  mustNotBeNegative('leastFt', given.leastFt, 'ft');
  if (given.spot === 'inside') return { verdict: 'no', why: 'indoors' };
  if (given.spot === 'under-roof') return { verdict: 'no', why: 'under-roof' };
  if (given.spot === null || given.nearestOpeningFt === null) {
    return { verdict: 'ask', why: 'not-known' };
  }
  mustNotBeNegative('nearestOpeningFt', given.nearestOpeningFt, 'ft');
  if (given.nearestOpeningFt >= given.leastFt) {
    return { verdict: 'far-enough', why: 'far-enough' };
  }
  return { verdict: given.kind === 'portable' ? 'no' : 'ask', why: 'too-near' };
}
