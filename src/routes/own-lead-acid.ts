import type { Home } from '../home/home';
import { leadAcidSizeFactor } from '../physics/lead-acid-temperature';
import { peukertHours } from '../physics/peukert';
import { practice } from '../tables/practice-figures';
import { loadsOf } from './pick-loads';

/**
 * Share of its nameplate that a lead-acid battery gives at the current it has here, 0 to 1: its rating is that of a
 * slow discharge, and what must run empties it faster. Peukert's law on the mean draw of the hardest goal season; a
 * slower draw than the rated one is given no more than the nameplate.
 */
export function shareAtItsCurrent(
  home: Home,
  of: { nameplateKwh: number; kw: number; peukertExponent: number },
): number {
  const drawKw = Math.min(of.kw, meanKw(home));
  if (of.nameplateKwh <= 0 || drawKw <= 0) return 1;
  const ratedHours = practice('lead-acid-rated-hours');
  // In units of the nameplate: a battery of 1 Ah that gives so many A.
  const amps = drawKw / of.nameplateKwh;
  const hours = peukertHours({ ratedAh: 1, ratedHours, exponent: of.peukertExponent }, amps)!;
  return Math.min(1, amps * hours);
}

/** Share of its capacity at 25 C that a lead-acid battery gives at a cell temperature of -4 to 50 C; no more when warmer. */
export const shareAtItsTemperature = (cellC: number): number =>
  Math.min(1, 1 / leadAcidSizeFactor(cellC));

/** What must keep running, as a steady draw over a hard day, kW. */
function meanKw(home: Home): number {
  const must = loadsOf(home, ['must']);
  const days = home.goalSeasons.map((season) =>
    must.reduce((sum, load) => sum + load.kwhPerDay[season].value, 0),
  );
  return Math.max(0, ...days) / 24;
}
