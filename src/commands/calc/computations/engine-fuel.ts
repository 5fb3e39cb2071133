import { engineEfficiency, fuelLine, fuelPerHour } from '../../../physics/engine-fuel';
import {
  type EngineFuel,
  type EngineType,
  engineType,
  engineTypes,
  fuelHeat,
  fuelHeatKwh,
} from '../../../tables/fuels';
import { citeTable } from '../../../tables/table';
import type { Calculation, Outcome } from '../calculation';
import type { Values } from '../values';

/** Fuel an engine burns at part load, and how long a supply lasts. */
export const engineFuel: Calculation = {
  name: 'engine-fuel',
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
      key: 'engine',
      about: 'what sort of generator',
      choices: engineTypes.rows.map((row) => row.engine),
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
  source: `${[fuelHeat, engineTypes].map((t) => citeTable(t)).join('; ')}; straight line of Skarstein & Uhlen 1989`,
  example: 'rated=5 load=2 fuel=gasoline engine=portable at-hand=10',
  run: fuelOf,
};

function fuelOf(values: Values): Outcome {
  const [ratedKw, loadKw] = [values.number('rated'), values.number('load')];
  const [fuel, engine] = [values.word('fuel') as EngineFuel, values.word('engine') as EngineType];
  const refused = refusal({ ratedKw, loadKw, fuel, engine });
  if (refused !== null) return { ok: false, says: refused };
  const { efficiency, noLoadRatio } = engineType(engine);
  const { unit, lowerKwh: kwhPerUnit } = fuelHeatKwh(fuel);
  const line = fuelLine({ ratedKw, fullLoadEfficiency: efficiency, noLoadRatio, kwhPerUnit });
  const burn = fuelPerHour(line, loadKw);
  const share = engineEfficiency(line, loadKw, kwhPerUnit) * 100;
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

function refusal(of: { ratedKw: number; loadKw: number; fuel: string; engine: string }) {
  if (of.loadKw > of.ratedKw) return 'the load is more than the generator is rated for.';
  const fits = (of.fuel === 'diesel') === (of.engine === 'diesel');
  return fits ? null : `a ${of.engine} generator does not burn ${of.fuel}.`;
}
