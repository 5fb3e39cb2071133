import type { SolarRowPoint } from '../../../plan/electrical/solar-row-points';

/** How the figure for the record low is come by, for whoever wants to check it. */
const RECORD_LOW_BASIS =
  'worked out from the nearest weather stations, on the careful side: their coldest month, less four times the scatter of its days, at night, less 5 °C more';

/** What the cold makes of solar panels in a row. */
export function saySolarRow(of: SolarRowPoint): string {
  switch (of.code) {
    case 'rows-side-by-side':
      return 'Rows side by side: 1.25 x the short-circuit amps (Isc) of all of them must not be more than the input takes, and wires and fuses carry 1.25 x that again (690.8).';
    case 'new-solar':
      return `New solar: ${inTheCold(of)}`;
    case 'row-not-known':
      return `Panels in a row: ${inTheCold(of)} Multiply the Voc of the row by ${of.factor.toFixed(2)} and hold it against the volts that the ${of.feedsPack ? 'power pack' : 'inverter or charger'} takes.`;
    case 'row-known':
    case 'row-too-long': {
      const volts = (Math.floor(of.mostLabelVolts * 10) / 10).toFixed(1);
      const long =
        of.code === 'row-too-long'
          ? ` Few panels show under ${of.usualLeastVolts} V, so this row is too long: do not plug it in before the labels are read.`
          : '';
      return `Panels in a row: ${inTheCold(of)} With ${of.inRow} in the row and an input of ${of.limitVolts} V, the label of each panel may show ${volts} V (Voc) at most.${long}`;
    }
  }
}

function inTheCold({ lowestC, factor }: { lowestC: number; factor: number }): string {
  const lowestF = Math.round(lowestC * 1.8 + 32);
  const percent = Math.round((factor - 1) * 100);
  return `at ${lowestF} °F they give up to ${percent} % more volts than their labels say (690.7, from memory). That is a careful figure for your record low, ${RECORD_LOW_BASIS}.`;
}
