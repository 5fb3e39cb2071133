import type { Basis } from '../../../plan/ride-through/ride-through';

/** What the odds are counted from. */
export function sayBasis(basis: Basis): string {
  switch (basis.code) {
    case 'battery':
      return `every hour of ${basis.years} drawn years as the start of an outage on a battery`;
    case 'generator':
      return `every hour of ${basis.years} drawn years as the start of an outage on a generator alone${FUEL}`;
    case 'generator-and-battery':
      return sample('a generator with a battery', basis);
    case 'vehicle':
      return sample(
        `a vehicle, ${Math.round(100 * basis.chargeShare)} % charged when the power fails`,
        basis,
      );
  }
}

const FUEL = '; fuel at hand only, no refill counted';

const sample = (
  what: string,
  given: Extract<Basis, { code: 'generator-and-battery' | 'vehicle' }>,
) =>
  `a sample for ${what}: ${given.starts.toLocaleString('en-US')} start hours of ${given.years} drawn years, one in ${given.everyHours}${given.burnsFuel ? FUEL : ''}`;
