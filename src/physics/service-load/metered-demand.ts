import { mustBePositive, mustNotBeNegative } from '../../quantity/must-be';
import { countedLine, type ServiceLoad, serviceLoad, shownLine } from './load-lines';
import { type ServiceVerdict, serviceVerdict } from './service-verdict';

export interface MeteredDemand {
  /** Highest demand on record, VA; on two legs that differ, twice the busier leg. */
  readonly peakVa: number;
  /** Averaging time of the record, minutes. */
  readonly intervalMinutes: number;
  /** Days the record covers without a gap. */
  readonly days: number;
  /** Solar, battery or other peak shaving on the service; null when not known. */
  readonly hasSolarOrPeakShaving: boolean | null;
  readonly newLoadVa: number;
  /** Runs for three hours or more: a car charger does. */
  readonly newLoadContinuous: boolean;
  readonly volts: number;
  readonly ratingAmps: number;
}

/** Why a metered peak is not used. */
export type MeteredRefusal =
  | 'solar-not-known'
  | 'solar-hides-it'
  | 'record-under-30-days'
  | 'readings-too-long'; // less than a year of record needs readings of 15 minutes or less

export type MeteredDemandResult =
  | { readonly kind: 'refused'; readonly reason: MeteredRefusal }
  | {
      readonly kind: 'done';
      readonly load: ServiceLoad;
      /** With a continuous new load at 125 %. */
      readonly carefulAmps: number;
      readonly verdict: ServiceVerdict;
    };

const YEAR_DAYS = 365;
const RECORDING_DAYS = 30;

/**
 * Load of an existing service from its metered peak, NEC 220.87: 1.25 x peak + new load. Refused with solar or peak
 * shaving on the service or when that is not known (the careful reading of its exception), and with too short a record.
 * Never better than `marginal` on a 30-day record, which must still be raised for the season it missed, or on readings
 * longer than 15 minutes, which hide the peak.
 */
export function meteredServiceLoad(given: MeteredDemand): MeteredDemandResult {
  mustNotBeNegative('peakVa', given.peakVa, 'VA');
  mustNotBeNegative('newLoadVa', given.newLoadVa, 'VA');
  mustBePositive('volts', given.volts, 'V');
  const reason = refusal(given);
  if (reason !== null) return { kind: 'refused', reason };
  const load = serviceLoad(
    [
      shownLine({ code: 'metered-peak' }, given.peakVa, '220.87(1)'),
      countedLine({ code: 'metered-peak-and-quarter' }, 1.25 * given.peakVa, '220.87(2)'),
      countedLine({ code: 'new-load' }, given.newLoadVa, '220.87(2)'),
    ],
    given.volts,
  );
  const extraVa = given.newLoadContinuous ? 0.25 * given.newLoadVa : 0;
  const carefulAmps = (load.totalVa + extraVa) / given.volts;
  const verdict = serviceVerdict({
    plainAmps: load.amps,
    carefulAmps,
    ratingAmps: given.ratingAmps,
  });
  const weak = given.days < YEAR_DAYS || given.intervalMinutes > 15;
  return {
    kind: 'done',
    load,
    carefulAmps,
    verdict: weak && verdict === 'within' ? 'marginal' : verdict,
  };
}

function refusal(metered: MeteredDemand): MeteredRefusal | null {
  if (metered.hasSolarOrPeakShaving === null) return 'solar-not-known';
  if (metered.hasSolarOrPeakShaving) return 'solar-hides-it';
  if (metered.days < RECORDING_DAYS) return 'record-under-30-days';
  if (metered.days < YEAR_DAYS && metered.intervalMinutes > 15) return 'readings-too-long';
  return null;
}
