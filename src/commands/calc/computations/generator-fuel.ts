import { fuelLine, fuelPerHour, generatorEfficiency } from '../../../physics/generator-fuel';
import {
  fuelHeat,
  fuelHeatKwh,
  type GeneratorFuel,
  type GeneratorType,
  generatorType,
  generatorTypes,
} from '../../../tables/fuels';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';

/** Fuel a generator burns at part load, and how long a supply lasts. */
export const generatorFuel: Calculation = {
  name: 'generator-fuel',
  about: 'fuel a generator burns at a load, and how long a supply lasts',
  inputs: [
    { kind: 'number', key: 'rated', about: 'rated output', unit: 'kW', from: 0.5, to: 150 },
    {
      kind: 'number',
      key: 'load',
      about: 'mean output while it runs',
      unit: 'kW',
      from: 0,
      to: 150,
    },
    {
      kind: 'choice',
      key: 'fuel',
      about: 'what it burns',
      choices: fuelHeat.rows.map((row) => row.fuel),
    },
    {
      kind: 'choice',
      key: 'generator',
      about: 'what sort of generator',
      choices: generatorTypes.rows.map((row) => row.generator),
    },
    {
      kind: 'number',
      key: 'at-hand',
      about: 'fuel at hand, in the unit it is sold in (gal, ft3)',
      unit: '',
      from: 0,
      to: 1e6,
      optional: true,
    },
  ],
  source: `${citedTables(fuelHeat, generatorTypes)}; straight line of Skarstein & Uhlen 1989`,
  example: 'rated=5 load=2 fuel=gasoline generator=portable at-hand=10',
  run: fuelOf,
};

function fuelOf(values: Values): Outcome {
  const [ratedKw, loadKw] = [values.number('rated'), values.number('load')];
  const [fuel, generator] = [
    values.word('fuel') as GeneratorFuel,
    values.word('generator') as GeneratorType,
  ];
  const refused = refusal({ ratedKw, loadKw, fuel, generator });
  if (refused !== null) return { ok: false, says: refused };
  const { efficiency, noLoadRatio } = generatorType(generator);
  const { unit, lowerKwh: kwhPerUnit } = fuelHeatKwh(fuel);
  const line = fuelLine({ ratedKw, fullLoadEfficiency: efficiency, noLoadRatio, kwhPerUnit });
  const burn = fuelPerHour(line, loadKw);
  const share = generatorEfficiency(line, loadKw, kwhPerUnit) * 100;
  const atHand = values.numberOrNull('at-hand');
  return {
    ok: true,
    steps: [
      {
        label: 'burn a kWh',
        formula: `1 / (${efficiency} x (1 + ${noLoadRatio}) x ${kwhPerUnit.toFixed(4)} kWh/${unit})`,
        value: line.perKwh,
        unit: `${unit}/kWh`,
      },
      {
        label: 'burn at no load',
        formula: `${noLoadRatio} x burn a kWh x rated kW`,
        value: line.noLoadPerHour,
        unit: `${unit}/h`,
      },
      { label: 'burn', formula: 'no load + burn a kWh x load', value: burn, unit: `${unit}/h` },
    ],
    results: [
      { label: 'fuel', value: burn, unit: `${unit}/h` },
      { label: 'electricity out of the heat in the fuel', value: share, unit: '%' },
      ...(atHand === null
        ? []
        : [{ label: 'fuel at hand lasts', value: atHand / burn, unit: 'h' }]),
    ],
    notes: ["The maker's own figures go first. Never run a generator indoors or near an opening."],
  };
}

function refusal(given: { ratedKw: number; loadKw: number; fuel: string; generator: string }) {
  if (given.loadKw > given.ratedKw) return 'the load is more than the generator is rated for.';
  const fits = (given.fuel === 'diesel') === (given.generator === 'diesel');
  return fits ? null : `a ${given.generator} generator does not burn ${given.fuel}.`;
}
