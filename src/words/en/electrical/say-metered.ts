import type { MeteredCheck } from '../../../plan/electrical/metered';

const refused: Readonly<Record<Extract<MeteredCheck, { kind: 'refused' }>['why'], string>> = {
  'peak-not-known': 'the highest demand of the year is not known',
  'supply-120': 'the supply is 120 V only',
  'main-not-read': 'the main breaker was not read',
  'solar-not-known': 'not known whether there is solar or a battery',
  'solar-hides-it': 'solar or peak shaving hides the true demand',
  'record-under-30-days': 'the record covers less than 30 days',
  'readings-too-long': 'less than a year of record needs readings of 15 minutes or less',
};

const decides: Readonly<Record<Extract<MeteredCheck, { kind: 'done' }>['verdict'], string>> = {
  within: 'passes',
  marginal: 'marginal: electrician and inspector decide',
  over: 'over: electrician and inspector decide',
};

/** Metered demand against the main breaker, NEC 220.87, or why it is not used. */
export function sayMetered(check: MeteredCheck): string {
  if (check.kind === 'refused') return `Not used: ${refused[check.why]} (220.87).`;
  const added =
    check.chargingWatts > 0
      ? `, with a battery charging at ${Math.round(check.chargingWatts / 100) / 10} kW`
      : '';
  return `1.25 x ${check.peakKw} kW metered${added}: ${Math.round(check.amps)} A, ${Math.round(check.carefulAmps)} A by the careful count, on ${check.ratingAmps} A: ${decides[check.verdict]} (220.87).`;
}
