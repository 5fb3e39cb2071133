import type { Basis } from '../../../plan/ride-through/ride-through';

/** What the odds are counted from. */
export function sayBasis(of: Basis): string {
  switch (of.code) {
    case 'battery':
      return `every hour of ${of.years} drawn years as the start of an outage on a battery`;
    case 'generator':
      return `every hour of ${of.years} drawn years as the start of an outage on a generator alone${FUEL}`;
    case 'generator-and-battery':
      return sample('a generator with a battery', of);
    case 'vehicle':
      return sample(
        `a vehicle, ${Math.round(100 * of.chargeShare)} % charged when the power fails`,
        of,
      );
  }
}

const FUEL = '; fuel at hand only, no refill counted';

const sample = (what: string, of: Extract<Basis, { code: 'generator-and-battery' | 'vehicle' }>) =>
  `a sample for ${what}: ${of.starts.toLocaleString('en-US')} start hours of ${of.years} drawn years, one in ${of.everyHours}${of.burnsFuel ? FUEL : ''}`;
