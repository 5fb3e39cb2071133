import type { GeneratorFuelDays } from '../../outage/generator-fuel-days';
import type { Figure, Source } from '../../quantity/figure';
import { addFigures, operand, timesFigure, worked } from '../../quantity/figure-arithmetic';
import type { StepName } from '../../quantity/step-name';
import type { GeneratorTypeRow } from '../../tables/fuels';

interface Burns {
  readonly type: GeneratorTypeRow;
  /** Rating on its label, kW. */
  readonly ratedKw: number;
  /** Of the fuel: "gal" or "ft3". */
  readonly unit: string;
  /** Heat in one of it, on the lower heating value, kWh. */
  readonly kwhPerUnit: number;
}

const HEAT: Partial<Source> = { kind: 'table', cite: 'AFDC, lower heating value' };
const HABIT: Partial<Source> = { kind: 'practice' };

/**
 * The fuel of a day by hand: what it burns by merely running, and what each kWh adds.
 *
 *   hours x idle burn + kWh x burn a kWh, with burn a kWh = 1 / (efficiency x (1 + idle share) x heat)
 */
export function fuelSteps(
  { type, ratedKw, unit, kwhPerUnit }: Burns,
  day: GeneratorFuelDays,
): Figure {
  const idleShare = operand(type.noLoadRatio, 'count', 'idle-share', HABIT);
  const one = operand(1, 'count', 'one-kwh');
  const load = operand(type.efficiency, 'count', 'full-load-share', HABIT);
  const both = addFigures([one, idleShare], { unit: 'count', is: 'load-and-idle' });
  const heat = operand(kwhPerUnit, 'kWh', 'heat-of-fuel', HEAT);
  const perKwh = worked(
    { by: 'ratio', of: [one], under: [load, both, heat] },
    { unit, is: 'fuel-per-kwh' },
  );
  const rated = operand(ratedKw, 'kW', 'rating');
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
