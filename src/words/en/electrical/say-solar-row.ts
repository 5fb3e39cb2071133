import type { SolarRowPoint } from '../../../plan/electrical/solar-row-points';

/** How the figure for the record low is come by, for whoever wants to check it. */
const RECORD_LOW_BASIS =
  'worked out from the nearest weather stations, on the careful side: their coldest month, less four times the scatter of its days, at night, less 5 °C more';

/** What the cold makes of solar panels in a row. */
export function saySolarRow(point: SolarRowPoint): string {
  switch (point.code) {
    case 'rows-side-by-side':
      return 'Rows side by side: 1.25 x the short-circuit amps (Isc) of all of them must not be more than the input takes, and wires and fuses carry 1.25 x that again (690.8).';
    case 'new-solar':
      return `New solar: ${inTheCold(point)}`;
    case 'row-not-known':
      return `Panels in a row: ${inTheCold(point)} Multiply the Voc of the row by ${point.factor.toFixed(2)} and hold it against the volts that the ${point.feedsPack ? 'power pack' : 'inverter or charger'} takes.`;
    case 'row-known':
    case 'row-too-long': {
      const volts = (Math.floor(point.mostLabelVolts * 10) / 10).toFixed(1);
      const long =
        point.code === 'row-too-long'
          ? ` Few panels show under ${point.usualLeastVolts} V, so this row is too long: do not plug it in before the labels are read.`
          : '';
      return `Panels in a row: ${inTheCold(point)} With ${point.inRow} in the row and an input of ${point.limitVolts} V, the label of each panel may show ${volts} V (Voc) at most.${long}`;
    }
  }
}

function inTheCold({ lowestC, factor }: { lowestC: number; factor: number }): string {
  const lowestF = Math.round(lowestC * 1.8 + 32);
  const percent = Math.round((factor - 1) * 100);
  return `at ${lowestF} °F they give up to ${percent} % more volts than their labels say (690.7, from memory). That is a careful figure for your record low, ${RECORD_LOW_BASIS}.`;
}
