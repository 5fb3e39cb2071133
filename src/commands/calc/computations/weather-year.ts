import { monthStatistics } from '../../../physics/weather/month-statistics';
import type { Calculation, Outcome, Result } from '../calculation';
import { monthSteps } from '../month-steps';
import { placeIn, placeInputs, weatherInputs } from '../place-input';
import type { Values } from '../values';
import { weatherIn, weatherSource } from '../weather-in';

/** Sun and temperature of synthetic years at a place. */
export const weatherYear: Calculation = {
  name: 'weather-year',
  about: 'sun and temperature by month at a place, and how dark its dark days are',
  inputs: [...placeInputs, ...weatherInputs],
  source: weatherSource,
  example: 'zip=98101',
  run: weatherAt,
};

function weatherAt(values: Values): Outcome {
  const { place, notes } = placeIn(values);
  const months = monthStatistics(weatherIn(place, values));
  const darkest = months.reduce((a, b) => (b.ghiKwhPerM2Day < a.ghiKwhPerM2Day ? b : a));
  const share = (label: string, value: number | null): Result[] =>
    value === null ? [] : [{ label, value: 100 * value, unit: '%' }];
  const coldest = Math.min(...months.map((month) => month.meanC));
  const hottest = Math.max(...months.map((month) => month.meanC));
  const sun = months.map((month) => month.ghiKwhPerM2Day);
  const warmth = months.map((month) => month.meanC);
  return {
    ok: true,
    steps: [
      ...monthSteps(sun, { formula: 'mean sun on the level', unit: 'kWh/m2 day' }),
      ...monthSteps(warmth, { formula: 'mean temperature', unit: 'C' }),
    ],
    results: [
      { label: 'sun of the darkest month', value: darkest.ghiKwhPerM2Day, unit: 'kWh/m2 day' },
      ...share('its darkest 3 days in a row, of its mean', darkest.darkest3Days),
      ...share('its darkest 7 days in a row, of its mean', darkest.darkest7Days),
      ...share('its spread from year to year', darkest.betweenYears),
      { label: 'coldest month', value: coldest, unit: 'C' },
      { label: 'hottest month', value: hottest, unit: 'C' },
    ],
    notes,
  };
}
