import { partBySize } from './costs';
import type { Part } from './route';

/** A portable engine of so many running watts: from 2 kW, the smallest of its class, to 12 kW. */
export function portableEnginePart(ratedWatts: number): Part {
  const kw = ratedWatts / 1000;
  return partBySize(
    'portable-engine',
    (kw - 2) / 10,
    `Portable generator, ${oneDigit(kw)} kW running`,
  );
}

/** A standby engine with its switch: from 7.5 kW, the smallest of its class, to 26 kW. */
export function standbyEnginePart(ratedWatts: number): Part {
  const kw = ratedWatts / 1000;
  return partBySize(
    'standby-engine',
    (kw - 7.5) / 18.5,
    `Standby generator, ${oneDigit(kw)} kW, with switch`,
  );
}

function oneDigit(kw: number): number {
  return Math.round(kw * 10) / 10;
}
