import type { Pair } from './pairs';
import { batteryPairs } from './pairs-batteries';
import { generatorPairs } from './pairs-generators';
import { lawPairs } from './pairs-law';
import { livingPairs } from './pairs-living';
import { peoplePairs } from './pairs-people';
import { wiringPairs } from './pairs-wiring';

/** Every home with a hazard beside its twin without. */
export const allPairs: readonly Pair[] = [
  ...peoplePairs,
  ...generatorPairs,
  ...livingPairs,
  ...batteryPairs,
  ...wiringPairs,
  ...lawPairs,
];
