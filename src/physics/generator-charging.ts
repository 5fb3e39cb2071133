import { mustBePositive, mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/**
 * Largest battery charger a generator carries beside other loads, W at the charger's input: the smaller of what is left in W and
 * what is left in VA times the charger's power factor, of `share` of the rating (0.8 as a rule: common practice, no source).
 * VA are added as plain numbers, which is never too high. 0 when nothing is left.
 */
export function largestChargerWatts(given: {
  ratedWatts: number;
  ratedVa: number;
  share: number;
  otherWatts: number;
  otherVa: number;
  chargerPowerFactor: number;
}): number {
  mustBePositive('ratedWatts', given.ratedWatts, 'W');
  mustBePositive('ratedVa', given.ratedVa, 'VA');
  mustBeShare('share', given.share);
  mustNotBeNegative('otherWatts', given.otherWatts, 'W');
  mustNotBeNegative('otherVa', given.otherVa, 'VA');
  mustBeShare('chargerPowerFactor', given.chargerPowerFactor);
  const byWatts = given.share * given.ratedWatts - given.otherWatts;
  const byVa = (given.share * given.ratedVa - given.otherVa) * given.chargerPowerFactor;
  return Math.max(0, Math.min(byWatts, byVa));
}

/** Frequency a generator shows at a load, Hz: no-load Hz - droop x load share. A 3600 rpm set runs at 62 to 63 Hz with no load. */
export function generatorFrequencyHz(given: {
  noLoadHz: number;
  fullLoadHz: number;
  loadShare: number;
}): number {
  mustBePositive('noLoadHz', given.noLoadHz, 'Hz');
  mustBePositive('fullLoadHz', given.fullLoadHz, 'Hz');
  mustNotBeNegative('loadShare', given.loadShare);
  return given.noLoadHz - (given.noLoadHz - given.fullLoadHz) * given.loadShare;
}

/** Whether a charger or inverter that accepts `lowHz` to `highHz` takes the generator at no load and at full load alike. */
export function acceptsGeneratorFrequency(given: {
  noLoadHz: number;
  fullLoadHz: number;
  lowHz: number;
  highHz: number;
}): boolean {
  if (!(given.lowHz < given.highHz)) {
    throw new RangeError(`lowHz must be below highHz, got ${given.lowHz} and ${given.highHz} Hz`);
  }
  return [given.noLoadHz, given.fullLoadHz].every((hz) => hz >= given.lowHz && hz <= given.highHz);
}
