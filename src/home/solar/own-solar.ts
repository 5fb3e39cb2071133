import type { Facts } from '../facts';

/** Panels on the roof already, kW; 0 where none were told, or not how many. */
export function ownSolarKw(facts: Facts): number {
  if (!facts.told('own-sources') || !facts.has('own-sources', 'solar')) return 0;
  return facts.told('solar-kw') ? (facts.number('solar-kw') ?? 0) : 0;
}

/** They were seen to run the house with the grid off. Not tried counts as no. */
export function solarRunsHouse(facts: Facts): boolean {
  return facts.told('solar-in-outage') && facts.is('solar-in-outage', 'runs-house');
}
