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
export function chargingTime(of: {
  storedKwh: number;
  sourceKw: number;
  chargerInputKw: number;
  efficiency: number;
}): ChargingTime {
  mustNotBeNegative('storedKwh', of.storedKwh, 'kWh');
  mustBePositive('sourceKw', of.sourceKw, 'kW');
  mustBePositive('chargerInputKw', of.chargerInputKw, 'kW');
  mustBeShare('efficiency', of.efficiency);
  const limitedBy = of.chargerInputKw < of.sourceKw ? 'charger' : 'source';
  const sourceKwh = of.storedKwh / of.efficiency;
  return { hours: sourceKwh / Math.min(of.sourceKw, of.chargerInputKw), limitedBy, sourceKwh };
}
