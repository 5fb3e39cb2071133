import { hoursSurvived } from '../../../outage/hours-survived';
import { netEnergy } from '../../../outage/net-energy';
import { oddsFromFull } from '../../../outage/ride-through-odds';
import { inverterHoursKwh, panelHoursKwh } from '../../../physics/panel/panel-hours';
import { planeYear } from '../../../physics/panel/plane-year';
import { HOURS_PER_YEAR } from '../../../physics/weather/calendar';
import { panelAssumption } from '../../../tables/panel-figures';
import type { Place } from '../../../tables/place/place';
import type { Calculation, Outcome } from '../calculation';
import { monthSteps } from '../month-steps';
import { panelInputs, panelsIn } from '../panels-input';
import { percentInput } from '../percent-input';
import { placeIn, placeInputs, weatherInputs } from '../place-input';
import type { Values } from '../values';
import { weatherIn, weatherSource } from '../weather-in';

/** Odds that a full battery, with or without solar, carries a steady load through an outage. */
export const rideThrough: Calculation = {
  name: 'ride-through',
  about: 'odds that a full battery with solar carries a load through an outage, by month',
  inputs: [
    ...placeInputs,
    { kind: 'number', key: 'usable', about: 'usable energy', unit: 'kWh', from: 0, to: 1000 },
    { kind: 'number', key: 'load', about: 'steady load', unit: 'W', from: 0, to: 100_000 },
    {
      kind: 'number',
      key: 'outage',
      about: 'length of the outage ("3 days")',
      unit: 'h',
      from: 1,
      to: 336,
      whole: true,
    },
    {
      kind: 'number',
      key: 'panels',
      about: 'rated panels',
      unit: 'kW',
      from: 0,
      to: 100,
      assumed: 0,
    },
    {
      kind: 'number',
      key: 'power',
      about: 'what the battery can take or give',
      unit: 'kW',
      from: 0.05,
      to: 100,
      assumed: 5,
    },
    {
      kind: 'number',
      key: 'idle',
      about: 'what the inverter draws from the cells by being on',
      unit: 'W',
      from: 0,
      to: 1000,
      assumed: 20,
    },
    percentInput({ key: 'efficiency', about: 'one way, in or out of the cells', assumed: 92 }),
    ...panelInputs,
    ...weatherInputs,
  ],
  source: `${weatherSource}; every hour of those years as a start, from full`,
  example: 'zip=80202 usable=10 kWh load=400 W outage=3 days panels=3 kW',
  run: oddsOf,
};

function oddsOf(values: Values): Outcome {
  const { place, notes } = placeIn(values);
  const supplyKw = sunKw(values, place);
  const loadKw = new Float64Array(supplyKw.length).fill(values.number('load') / 1000);
  const efficiency = values.number('efficiency') / 100;
  const power = values.number('power');
  const limits = {
    chargeKw: power,
    dischargeKw: power,
    chargeEfficiency: efficiency,
    dischargeEfficiency: efficiency,
    idleKw: values.number('idle') / 1000,
  };
  const hours = values.number('outage');
  const { netKwh, overloadKwh } = netEnergy({ loadKw, supplyKw, limits });
  const capKwh = values.number('usable');
  const survived = hoursSurvived({ netKwh, overloadKwh, capKwh, limitHours: hours });
  const odds = oddsFromFull(survived, [hours])[0]!;
  const percent = odds.months.map((share) => (share === null ? null : 100 * share));
  const sorted = survived.sort();
  const atRank = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]!;
  return {
    ok: true,
    steps: monthSteps(percent, { formula: `start hours that last ${hours} h`, unit: '%' }),
    results: [
      { label: `outages of ${hours} h ridden through`, value: 100 * odds.all!, unit: '%' },
      { label: `lasts, up to ${hours} h, in half of all starts`, value: atRank(0.5), unit: 'h' },
      { label: 'lasts in all but the worst tenth', value: atRank(0.1), unit: 'h' },
    ],
    notes: [...notes, 'The load is steady and nothing is switched off to save charge.'],
  };
}

/** Output of the panels, kW in each hour; zero without panels. */
function sunKw(values: Values, place: Place): Float64Array {
  const panelKw = values.number('panels');
  const weather = weatherIn(place, values);
  if (panelKw === 0) return new Float64Array(weather.years * HOURS_PER_YEAR);
  const plane = { tiltDeg: values.number('tilt'), facingDeg: values.number('facing') };
  const clock = { lonDeg: place.lonDeg, utcOffsetH: place.utcOffsetH };
  const year = planeYear(weather.sky, plane, clock);
  const hours = panelHoursKwh(weather, year, panelsIn(values, place.climate));
  inverterHoursKwh(hours, {
    ratedKw: 1 / panelAssumption('dcPerAcKw'),
    ratedEfficiency: panelAssumption('inverterEfficiency'),
    into: hours,
  });
  return Float64Array.from(hours, (kwh) => kwh * panelKw);
}
