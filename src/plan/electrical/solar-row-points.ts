import type { Home } from '../../home/home';
import { type SolarRow, solarRow } from '../../home/solar/solar-row';
import { siteRecordLowC } from '../../home/weather/record-low';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { panelColdFactor } from '../../tables/electrical/panel-cold-factor';
import { practice } from '../../tables/practice-figures';

/** Few panels show less than this on their label, V. */
const USUAL_LEAST_VOC = practice('panel-least-voc');

/** What the record low makes of the volts on the labels of panels. */
interface InTheCold {
  readonly lowestC: number;
  /** Volts at the record low against those on the labels. */
  readonly factor: number;
}

/** A point about solar panels in a row; `words` says it. */
export type SolarRowPoint =
  | { readonly code: 'rows-side-by-side' }
  | ({ readonly code: 'new-solar' } & InTheCold)
  /** How many stand in the row, or what the input takes, is not known. */
  | ({ readonly code: 'row-not-known'; readonly feedsPack: boolean } & InTheCold)
  | ({
      readonly code: 'row-known' | 'row-too-long';
      readonly inRow: number;
      readonly limitVolts: number;
      readonly mostLabelVolts: number;
      readonly usualLeastVolts: number;
    } & InTheCold);

/** What the cold makes of solar panels in a row, for the household and the electrician; empty where there are none. */
export function solarRowPoints(home: Home, route: Route): SolarRowPoint[] {
  const row = solarRow(home);
  if (row !== null) return [ownRow(row), { code: 'rows-side-by-side' }];
  if (!traitsOf[route.kind].roofSolar) return [];
  const lowestC = siteRecordLowC(home.site);
  return [
    { code: 'new-solar', lowestC, factor: panelColdFactor(lowestC) },
    { code: 'rows-side-by-side' },
  ];
}

function ownRow({ lowestC, factor, inRow, limitVolts, ...row }: SolarRow): SolarRowPoint {
  if (inRow === null || limitVolts === null)
    return { code: 'row-not-known', lowestC, factor, feedsPack: row.feedsPack };
  const mostLabelVolts = row.mostLabelVolts!;
  return {
    code: mostLabelVolts < USUAL_LEAST_VOC ? 'row-too-long' : 'row-known',
    lowestC,
    factor,
    inRow,
    limitVolts,
    mostLabelVolts,
    usualLeastVolts: USUAL_LEAST_VOC,
  };
}
