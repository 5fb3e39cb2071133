import type { GasHere } from '../../home/heat/gas-here';
import type { GeneratorFuel } from '../../tables/fuels';

const fuels: readonly string[] = [
  'gasoline',
  'propane',
  'natural-gas',
  'diesel',
] satisfies GeneratorFuel[];

export function isFuel(value: unknown): value is GeneratorFuel {
  return fuels.includes(String(value));
}

/** What a generator fixed outdoors would burn from the supply of the home; null where that is none, or not known. */
export const fuelOfGas: Readonly<Record<GasHere, GeneratorFuel | null>> = {
  street: 'natural-gas',
  tank: 'propane',
  some: null,
  none: null,
  unknown: null,
  'no-tank-known': null,
};
