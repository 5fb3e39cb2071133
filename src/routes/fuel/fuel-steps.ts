import type { GeneratorFuelDays } from '../../outage/generator-fuel-days';
import type { Figure, Source } from '../../quantity/figure';
import { addFigures, operand, timesFigure, worked } from '../../quantity/figure-arithmetic';
import type { StepName } from '../../quantity/step-name';

interface Burns {
  /** Share of the heat that becomes power at full load, and the idle burn over what full load adds to it. */
  readonly efficiency: number;
  readonly noLoadRatio: number;
}

/** What is burned in what, the same whatever the share. */
export interface BurnedIn {
  readonly rated: Figure;
  /** Of the fuel: "gal" or "ft3". */
  readonly unit: string;
  /** Heat in one of it. */
  readonly heat: Figure;
}

/** @param ratedKw on its label @param kwhPerUnit on the lower heating value */
export function burnedIn(ratedKw: number, unit: string, kwhPerUnit: number): BurnedIn {
  return {
    rated: operand(ratedKw, 'kW', 'rating'),
    unit,
    heat: operand(kwhPerUnit, 'kWh', 'heat-of-fuel', HEAT),
  };
}

const HEAT: Partial<Source> = { kind: 'table', cite: [{ ref: 'AFDC, lower heating value' }] };
const HABIT: Partial<Source> = { kind: 'practice' };

/**
 * The fuel of a day by hand: what it burns by merely running, and what each kWh adds.
 *
 *   hours x idle burn + kWh x burn a kWh, with burn a kWh = 1 / (efficiency x (1 + idle share) x heat)
 */
export function fuelSteps(
  { efficiency, noLoadRatio }: Burns,
  { rated, unit, heat }: BurnedIn,
  day: GeneratorFuelDays,
): Figure {
  const idleShare = operand(noLoadRatio, 'count', 'idle-share', HABIT);
  const one = operand(1, 'count', 'one-kwh');
  const load = operand(efficiency, 'count', 'full-load-share', HABIT);
  const both = addFigures([one, idleShare], { unit: 'count', is: 'load-and-idle' });
  const perKwh = worked(
    { by: 'ratio', of: [one], under: [load, both, heat] },
    { unit, is: 'fuel-per-kwh' },
  );
  const idle = worked(
    { by: 'ratio', of: [idleShare, perKwh, rated], under: [] },
    { unit, is: 'idle-burn' },
  );
  const burned = (amount: Figure, each: Figure, is: StepName) =>
    timesFigure(amount, each, { unit, is });
  const runs = operand(day.runHoursPerDay, 'h', 'hours-run');
  const gives = operand(day.servedKwhPerDay, 'kWh', 'kwh-given');
  return addFigures(
    [burned(runs, idle, 'burned-running'), burned(gives, perKwh, 'burned-giving')],
    { unit: `${unit}/day` },
  );
}
