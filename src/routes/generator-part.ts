import { partBySize } from './costs';
import type { Part } from './route';

/** A portable generator of so many running watts: from 2 kW, the smallest of its class, to 12 kW. */
export function portableGeneratorPart(ratedWatts: number): Part {
  const kw = ratedWatts / 1000;
  return partBySize('portable-engine', (kw - 2) / 10, { code: 'portable-generator', kw });
}

/** A standby generator with its switch: from 7.5 kW, the smallest of its class, to 26 kW. */
export function standbyGeneratorPart(ratedWatts: number): Part {
  const kw = ratedWatts / 1000;
  return partBySize('standby-engine', (kw - 7.5) / 18.5, { code: 'standby-generator', kw });
}
