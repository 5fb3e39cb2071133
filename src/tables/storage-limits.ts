import { namedValue } from './named-values';
import { sitingDistances } from './siting-distances';

const value = (id: string) => namedValue(sitingDistances, id).value;

/** Largest batteries and least distances of IRC 2021 R328 and NFPA 855 chapter 15, as the siting check wants them. */
export const storageLimits = {
  unitKwh: value('storage-unit-kwh'),
  placeKwh: {
    'utility-space': value('storage-utility-space-kwh'),
    garage: value('storage-garage-kwh'),
    'exterior-wall': value('storage-exterior-wall-kwh'),
    ground: value('storage-ground-kwh'),
  },
  gapIn: value('storage-between-units'),
  openingIn: value('storage-to-opening'),
  aboveVehicleIn: value('storage-above-vehicle'),
} as const;
