import type { OutageRecord, PooledYears } from '../../../tables/outage-statistics';

/** Whose record of outages went in and of which years; a place our table has no figures of is named with the gap. */
export function sayOutageRecord({ state, own, nation }: OutageRecord): string {
  const ofNation = `the outage record of the US, ${sayYears(nation)}`;
  if (state === null) return ofNation;
  if (own === null) return `${ofNation}: our table has no figures of ${state}`;
  return `the outage record of ${state}, ${sayYears(own)}, with ${ofNation}`;
}

/** "2014 to 2023", or "6 years of 2014 to 2023" where some are missing. */
function sayYears({ count, first, last }: PooledYears): string {
  const whole = `${first} to ${last}`;
  return count === last - first + 1 ? whole : `${count} years of ${whole}`;
}
