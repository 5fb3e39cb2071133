import { type RoofYield, roofYield } from '../../../physics/panel/roof-yield';
import { panelAssumption, panelLosses } from '../../../tables/panel-figures';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import { monthSteps } from '../month-steps';
import { panelInputs, panelsIn } from '../panels-input';
import { placeIn, placeInputs, weatherInputs } from '../place-input';
import type { Values } from '../values';
import { weatherIn, weatherSource } from '../weather-in';

/** What panels on a roof give, month by month, over many synthetic years. */
export const roofYieldOf: Calculation = {
  name: 'roof-yield',
  about: 'what solar panels on a roof give by month, in a bad year and in the darkest days',
  inputs: [
    ...placeInputs,
    { kind: 'number', key: 'panels', about: 'rated panels', unit: 'kW', from: 0, to: 100 },
    {
      kind: 'number',
      key: 'inverter',
      about: `rated inverter; panels / ${panelAssumption('dcPerAcKw')} when left out`,
      unit: 'kW',
      from: 0,
      to: 100,
      optional: true,
    },
    ...panelInputs,
    ...weatherInputs,
  ],
  source: `${weatherSource}; ${citedTables(panelLosses)}; sky of Reindl, Beckman & Duffie 1990`,
  example: 'zip=80202 panels=5 kW tilt=30',
  run: yieldOf,
};

function yieldOf(values: Values): Outcome {
  const { place, notes } = placeIn(values);
  const panelKw = values.number('panels');
  const found = roofYield({
    weather: weatherIn(place, values),
    plane: { tiltDeg: values.number('tilt'), facingDeg: values.number('facing') },
    clock: { lonDeg: place.lonDeg, utcOffsetH: place.utcOffsetH },
    traits: panelsIn(values, place.climate),
    panelKw,
    inverterKw: values.numberOrNull('inverter') ?? panelKw / panelAssumption('dcPerAcKw'),
    inverterEfficiency: panelAssumption('inverterEfficiency'),
  });
  const years = `mean of ${values.number('years')} years`;
  return {
    ok: true,
    steps: monthSteps(found.monthKwhPerDay, { formula: years, unit: 'kWh/day' }),
    results: resultsOf(found),
    notes,
  };
}

function resultsOf(found: RoofYield) {
  return [
    { label: 'year', value: found.yearKwh, unit: 'kWh' },
    { label: 'worst year', value: found.worstYearKwh, unit: 'kWh' },
    { label: 'best year', value: found.bestYearKwh, unit: 'kWh' },
    ...found.darkestRunKwhPerDay.map(({ days, kwhPerDay }) => ({
      label: days === 1 ? 'darkest day of a year' : `darkest ${days} days in a row of a year`,
      value: kwhPerDay,
      unit: 'kWh/day',
    })),
  ];
}
