import { mustBePositive, mustBeShare, mustNotBeNegative } from '../quantity/must-be';

export interface ChargingTime {
  readonly hours: number;
  /** The smaller of the two decides. */
  readonly limitedBy: 'source' | 'charger';
  /** kWh the source must give for it. */
  readonly sourceKwh: number;
}

/**
 * Hours to put energy into a battery: h = kWh / (efficiency x min(source kW, charger kW)), both kW at the input of the
 * charger; efficiency (above 0 to 1) is charger input to cells. The slow last part of a charge is left out.
 */
export function chargingTime(given: {
  storedKwh: number;
  sourceKw: number;
  chargerInputKw: number;
  efficiency: number;
}): ChargingTime {
  mustNotBeNegative('storedKwh', given.storedKwh, 'kWh');
  mustBePositive('sourceKw', given.sourceKw, 'kW');
  mustBePositive('chargerInputKw', given.chargerInputKw, 'kW');
  mustBeShare('efficiency', given.efficiency);
  const limitedBy = given.chargerInputKw < given.sourceKw ? 'charger' : 'source';
  const sourceKwh = given.storedKwh / given.efficiency;
  return {
    hours: sourceKwh / Math.min(given.sourceKw, given.chargerInputKw),
    limitedBy,
    sourceKwh,
  };
}
