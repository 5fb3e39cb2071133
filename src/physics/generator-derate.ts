import { requireWithin } from '../quantity/require-within';

export interface GeneratorDerateParts {
  readonly ratedKw: number;
  readonly altitudeFt: number;
  readonly airC: number;
  /** Output lost for each 1000 ft above `freeFt`, as a share. */
  readonly lossPerThousandFt: number;
  /** Height up to which nothing is lost, ft. */
  readonly freeFt: number;
  /** Output lost for each 5 K of air above `freeC`, as a share. */
  readonly lossPerFiveKelvin: number;
  /** Air temperature up to which nothing is lost, C. */
  readonly freeC: number;
}

/**
 * What an unboosted generator still gives in thin or hot air, kW:
 *   rated x (1 - a (ft - ft0) / 1000) x (1 - b (C - C0) / 5), each factor within 0..1
 *
 * 0.035 for 1000 ft from sea level is what operators' manuals of small carburetted sets print, and
 * 0.03 for 5 K above 40 C; others print 0.03 for 500 m above 1000 m. The maker's own table goes first.
 * Altitude -1500 to 20,000 ft, air -60 to 60 C.
 */
export function generatorOutputKw(parts: GeneratorDerateParts): number {
  requireWithin('ratedKw', parts.ratedKw, { atLeast: 0, unit: 'kW' });
  requireWithin('altitudeFt', parts.altitudeFt, { atLeast: -1500, atMost: 20_000, unit: 'ft' });
  requireWithin('airC', parts.airC, { atLeast: -60, atMost: 60, unit: 'C' });
  const thousands = Math.max(0, parts.altitudeFt - parts.freeFt) / 1000;
  const fives = Math.max(0, parts.airC - parts.freeC) / 5;
  const thin = Math.max(0, 1 - parts.lossPerThousandFt * thousands);
  const hot = Math.max(0, 1 - parts.lossPerFiveKelvin * fives);
  return parts.ratedKw * thin * hot;
}

/** The stricter of the rules in use for small sets: 3.5 % for 1000 ft from sea level, 3 % for 5 K over 40 C. */
export const SMALL_GENERATOR_DERATE = {
  lossPerThousandFt: 0.035,
  freeFt: 0,
  lossPerFiveKelvin: 0.03,
  freeC: 40,
} as const;
