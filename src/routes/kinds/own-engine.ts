import type { Home } from '../../home/home';
import type { EngineFuel } from '../../tables/fuels';
import { siteShare } from '../engine-size';

/** The portable engine the household has already. */
export interface OwnEngine {
  readonly step: { watts: number; startVa: number };
  readonly ratedWatts: number;
  readonly volts: 120 | 240;
  readonly fuel: EngineFuel;
}

/** VA of start that each W of an engine can lend for a moment, as in the table of generic sizes. */
const START_PER_WATT = 2.3;

/** Null where none was told, or not how strong it is. */
export function ownEngine(home: Home): OwnEngine | null {
  const { facts } = home;
  if (!facts.told('own-sources') || !facts.has('own-sources', 'engine-portable')) return null;
  const ratedWatts = facts.number('engine-watts');
  if (ratedWatts === null) return null;
  const watts = ratedWatts * siteShare(home);
  const fuel = facts.value('engine-fuel');
  return {
    ratedWatts,
    step: { watts, startVa: watts * START_PER_WATT },
    volts: facts.is('engine-volts', 'v240') ? 240 : 120,
    fuel: isFuel(fuel) ? fuel : 'gasoline',
  };
}

function isFuel(value: unknown): value is EngineFuel {
  return ['gasoline', 'propane', 'natural-gas', 'diesel'].includes(String(value));
}
