import type { Home } from '../../home/home';
import { healthHangs } from '../../home/people/health-devices';
import { sourceOfAnswer } from '../../home/sources';
import type { Figure } from '../../quantity/figure';
import { HOURS_IN_DAY, operand, worked } from '../../quantity/figure-arithmetic';
import type { FuelUse } from '../route';
import { keptGal, keptIn } from './fuel-containers';
import { gasolineLimitGal } from './gasoline-limit';

const GAL = { unit: 'gal' } as const;

/** The fuel of the goal in whole gallons by hand: burned a day x hours / 24, rounded up. */
export function goalGallonsSteps(home: Home, { perDay }: Pick<FuelUse, 'perDay'>): Figure {
  const aDay = healthHangs(home) ? operand(perDay.high, perDay.unit, 'thirsty-day') : perDay;
  const exact = worked(
    { by: 'ratio', of: [aDay, home.goalHours], under: [HOURS_IN_DAY] },
    { ...GAL, is: 'burned-in-goal' },
  );
  return worked({ by: 'rounded-up', of: [exact], to: 1 }, { ...GAL, is: 'gallons-for-goal' });
}

/** Gallons there are once the cans are filled, by hand: for the goal, as far as the usual limit goes. */
export function cansSteps(home: Home, fuel: FuelUse): Figure {
  if (fuel.noMoreThanGal !== undefined) return operand(fuel.noMoreThanGal, 'gal', 'fuel-kept');
  const limit = operand(gasolineLimitGal(home), 'gal', 'usual-limit');
  const question = keptIn(fuel.fuel);
  const kept = operand(keptGal(home, fuel.fuel), 'gal', 'fuel-kept', {
    ...(home.facts.told(question) && sourceOfAnswer(home.facts, question)),
  });
  const stored = worked(
    { by: 'smallest', of: [goalGallonsSteps(home, fuel), limit] },
    { ...GAL, is: 'worth-storing' },
  );
  return worked({ by: 'largest', of: [kept, stored] }, GAL);
}
