import { mostLabelVolts } from '../../physics/panel/row-in-cold';
import { panelColdFactor } from '../../tables/electrical/panel-cold-factor';
import type { Home } from '../home';
import { siteRecordLowC } from '../weather/record-low';

/** Panels in a row that this home has or may have, and what the record low makes of their volts. */
export interface SolarRow {
  /** Feeds a pack to carry, and not only a roof system that somebody fitted. */
  readonly feedsPack: boolean;
  readonly lowestC: number;
  /** Volts at the record low against those on the labels. */
  readonly factor: number;
  /** null: not known. */
  readonly inRow: number | null;
  /** Volts that the input takes by its label; null: not known. */
  readonly limitVolts: number | null;
  /** Most volts each panel's label may show; null where a number is missing. */
  readonly mostLabelVolts: number | null;
}

/** The row of panels of a home with solar or with a pack that has panels; null where there is none. */
export function solarRow({ facts, site }: Pick<Home, 'facts' | 'site'>): SolarRow | null {
  if (!facts.applies('solar-row')) return null;
  const inRow = facts.told('solar-row') ? facts.number('solar-row') : null;
  if (inRow === 0) return null;
  const lowestC = siteRecordLowC(site);
  const factor = panelColdFactor(lowestC);
  const limitVolts = facts.told('solar-limit') ? facts.number('solar-limit') : null;
  return {
    feedsPack: facts.has('own-sources', 'power-pack'),
    lowestC,
    factor,
    inRow,
    limitVolts,
    mostLabelVolts:
      inRow === null || limitVolts === null ? null : mostLabelVolts({ inRow, limitVolts, factor }),
  };
}
