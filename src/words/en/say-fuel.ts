import type { GeneratorFuel } from '../../tables/fuels';

const names: Readonly<Record<GeneratorFuel, string>> = {
  gasoline: 'gasoline',
  diesel: 'diesel',
  propane: 'propane',
  'natural-gas': 'natural gas',
};

/** A fuel as people call it. */
export const sayFuel = (fuel: GeneratorFuel): string => names[fuel];
