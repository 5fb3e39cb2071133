import { hardestSeason } from '../../advice/hardest-season';
import type { Figure } from '../../quantity/figure';
import type { Plan } from '../plan';
import { FIGURE_IDS, type FigureId } from './figure-ids';

export interface Explainable {
  readonly id: FigureId;
  readonly figure: Figure;
}

/** The figures this plan has, each with the steps it carries; nothing is worked out before somebody asks. */
export function explainable({ home, advice: { route }, undecided }: Plan): Explainable[] {
  const { must } = home.demand;
  // Nothing is advised before enough is known.
  const advised = undecided.length > 0 ? null : route;
  const found: Readonly<Record<FigureId, Figure | null>> = {
    'running-power': must.runningWatts,
    start: must.startVa,
    'energy-a-day': must.kwhPerDay[hardestSeason(home)],
    price: advised?.costUsd ?? null,
    hours: advised?.lasting.hours ?? null,
    'fuel-a-day': advised?.fuel?.perDay ?? null,
  };
  return FIGURE_IDS.flatMap((id) => {
    const figure = found[id];
    return figure === null ? [] : [{ id, figure }];
  });
}
