import type { Home } from '../../home/home';
import { type SolarRow, solarRow } from '../../home/solar/solar-row';
import { RECORD_LOW_BASIS, siteRecordLowC } from '../../home/weather/record-low';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { panelColdFactor } from '../../tables/panel-cold-factor';
import { practice } from '../../tables/practice-figures';

/** Few panels show less than this on their label, V. */
const USUAL_LEAST_VOC = practice('panel-least-voc');

/** What the cold makes of solar panels in a row, for the household and the electrician; empty where there are none. */
export function solarRowPoints(home: Home, route: Route): string[] {
  const row = solarRow(home);
  if (row !== null) return [ownRow(row), currentPoint];
  if (!traitsOf[route.kind].roofSolar) return [];
  const lowestC = siteRecordLowC(home.site);
  return [`New solar: ${coldSays(lowestC, panelColdFactor(lowestC))}`, currentPoint];
}

function ownRow(row: SolarRow): string {
  const says = coldSays(row.lowestC, row.factor);
  const where = row.feedsPack ? 'power pack' : 'inverter or charger';
  if (row.inRow === null || row.limitVolts === null) {
    return `Panels in a row: ${says} Multiply the Voc of the row by ${row.factor.toFixed(2)} and hold it against the volts that the ${where} takes.`;
  }
  const most = row.mostLabelVolts!;
  const long =
    most < USUAL_LEAST_VOC
      ? ` Few panels show under ${USUAL_LEAST_VOC} V, so this row is too long: do not plug it in before the labels are read.`
      : '';
  return `Panels in a row: ${says} With ${row.inRow} in the row and an input of ${row.limitVolts} V, the label of each panel may show ${(Math.floor(most * 10) / 10).toFixed(1)} V (Voc) at most.${long}`;
}

function coldSays(lowestC: number, factor: number): string {
  const lowestF = Math.round(lowestC * 1.8 + 32);
  const percent = Math.round((factor - 1) * 100);
  return `at ${lowestF} °F they give up to ${percent} % more volts than their labels say (690.7, from memory). That is a careful figure for your record low, ${RECORD_LOW_BASIS}.`;
}

const currentPoint =
  'Rows side by side: 1.25 x the short-circuit amps (Isc) of all of them must not be more than the input takes, and wires and fuses carry 1.25 x that again (690.8).';
