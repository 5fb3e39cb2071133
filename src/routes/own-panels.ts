import type { Home } from '../home/home';
import { ownSolarKw, solarRunsHouse } from '../home/solar/own-solar';
import { owned, part } from './costs';
import type { Part } from './route';
import type { If } from './stops/condition';

/** What brings the sun of the panels that are there to a battery fixed to the house. */
export function ownPanelParts({ facts }: Home): Part[] {
  const kw = ownSolarKw(facts);
  if (kw === 0) return [];
  const have = owned({ code: 'own-panels', kw }, 'solar', 1000 * kw);
  return islands(facts) ? [have] : [have, part('solar-rewire')];
}

/** What must be settled before they run with the grid off. */
export function ownPanelIfs({ facts }: Home): If[] {
  if (ownSolarKw(facts) === 0 || islands(facts)) return [];
  return ['panels-behind-battery'];
}

/** Panels that already run the house beside a battery that is already there. */
function islands(facts: Home['facts']): boolean {
  return solarRunsHouse(facts) && facts.has('own-sources', 'home-battery');
}
