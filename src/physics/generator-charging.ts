import { mustBePositive, mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/**
 * Largest battery charger a generator carries beside other loads, W at the charger's input: the smaller of what is left in W and
 * what is left in VA times the charger's power factor, of `share` of the rating (0.8 as a rule: common practice, no source).
 * VA are added as plain numbers, which is never too high. 0 when nothing is left.
 */
export function largestChargerWatts(of: {
  ratedWatts: number;
  ratedVa: number;
  share: number;
  otherWatts: number;
  otherVa: number;
  chargerPowerFactor: number;
}): number {
  mustBePositive('ratedWatts', of.ratedWatts, 'W');
  mustBePositive('ratedVa', of.ratedVa, 'VA');
  mustBeShare('share', of.share);
  mustNotBeNegative('otherWatts', of.otherWatts, 'W');
  mustNotBeNegative('otherVa', of.otherVa, 'VA');
  mustBeShare('chargerPowerFactor', of.chargerPowerFactor);
  const byWatts = of.share * of.ratedWatts - of.otherWatts;
  const byVa = (of.share * of.ratedVa - of.otherVa) * of.chargerPowerFactor;
  return Math.max(0, Math.min(byWatts, byVa));
}

/** Frequency a generator shows at a load, Hz: no-load Hz - droop x load share. A 3600 rpm set runs at 62 to 63 Hz with no load. */
export function generatorFrequencyHz(of: {
  noLoadHz: number;
  fullLoadHz: number;
  loadShare: number;
}): number {
  mustBePositive('noLoadHz', of.noLoadHz, 'Hz');
  mustBePositive('fullLoadHz', of.fullLoadHz, 'Hz');
  mustNotBeNegative('loadShare', of.loadShare);
  return of.noLoadHz - (of.noLoadHz - of.fullLoadHz) * of.loadShare;
}

/** Whether a charger or inverter that accepts `lowHz` to `highHz` takes the generator at no load and at full load alike. */
export function acceptsGeneratorFrequency(of: {
  noLoadHz: number;
  fullLoadHz: number;
  lowHz: number;
  highHz: number;
}): boolean {
  if (!(of.lowHz < of.highHz)) {
    throw new RangeError(`lowHz must be below highHz, got ${of.lowHz} and ${of.highHz} Hz`);
  }
  return [of.noLoadHz, of.fullLoadHz].every((hz) => hz >= of.lowHz && hz <= of.highHz);
}
