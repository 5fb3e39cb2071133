import { livedHome } from '../../home/measures/lived-home';
import type { Figure } from '../../quantity/figure';
import { operand, worked } from '../../quantity/figure-arithmetic';
import { keptGal } from '../../routes/fuel/fuel-containers';
import { onceStored } from '../../routes/fuel/once-stored';
import { PROPANE_USABLE } from '../../routes/generator-size';
import { carefulGallons, fuelForGoal } from '../fuel/fuel-for-goal';
import type { Plan } from '../plan';
import type { FigureId } from './figure-ids';

type KeptId = Extract<FigureId, 'fuel-at-hand' | 'fuel-stored' | 'cans' | 'fuel-in-tank' | Gauge>;
type Gauge = 'gauge-120' | 'gauge-250' | 'gauge-500' | 'gauge-1000';

const GAL = { unit: 'gal' } as const;

/** Fuel that is there, is to be there, and where a gauge has to stand for it; null where the papers name none. */
export function fuelKept(plan: Plan): Readonly<Record<KeptId, Figure | null>> {
  const { route } = plan.advice;
  const { home } = plan;
  const atHand = route.fuel?.atHand ?? null;
  const stored = onceStored(livedHome(home, route.way), route)?.route.fuel?.atHand ?? null;
  return {
    'fuel-at-hand': route.fuel?.tank ?? atHand,
    'fuel-stored': stored,
    cans: stored === null ? null : toFill(plan, stored),
    'fuel-in-tank': inTank(plan),
    ...gauges(plan),
  };
}

function toFill({ home, advice: { route } }: Plan, stored: Figure): Figure | null {
  const kept = operand(keptGal(home, route.fuel?.fuel), 'gal', 'fuel-kept');
  const exact = worked({ by: 'difference', of: [stored, kept] }, { ...GAL, is: 'fuel-missing' });
  return exact.value > 0 ? worked({ by: 'rounded-up', of: [exact], to: 1 }, GAL) : null;
}

/** What a tank of propane must hold when an outage begins, by the careful count. */
function inTank({ home, advice: { route } }: Plan): Figure | null {
  const need = route.fuel === null ? null : fuelForGoal(home, route.fuel);
  if (need === null || need.keepInTank === null) return null;
  const careful = carefulGallons(home, route.fuel!);
  const usable = operand(PROPANE_USABLE.low, 'count', 'usable-of-tank', { kind: 'practice' });
  const exact = worked(
    { by: 'ratio', of: [careful], under: [usable] },
    { ...GAL, is: 'tank-for-goal' },
  );
  return worked({ by: 'rounded-up', of: [exact], to: 1 }, GAL);
}

function gauges(plan: Plan): Readonly<Record<Gauge, Figure | null>> {
  const { home, advice } = plan;
  const fuel = advice.route.fuel;
  const shown = fuel === null ? [] : (fuelForGoal(home, fuel)?.gauge ?? []);
  const keep = inTank(plan);
  const at = (tankGal: number): Figure | null => {
    if (keep === null || shown.every((one) => one.tankGal !== tankGal)) return null;
    const tank = operand(tankGal, 'gal', 'tank-size');
    const exact = worked(
      { by: 'ratio', of: [operand(100, 'count', 'percent-of'), keep], under: [tank] },
      { unit: '%', is: 'gauge-for-goal' },
    );
    return worked({ by: 'rounded-up', of: [exact], to: 1 }, { unit: '%' });
  };
  return {
    'gauge-120': at(120),
    'gauge-250': at(250),
    'gauge-500': at(500),
    'gauge-1000': at(1000),
  };
}
