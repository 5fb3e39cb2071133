import packed from '#compiled/zips.js';
import type { Point } from './earth-distance';

/** ZIP codes in rising order, and the middle of each. */
interface ZipList {
  codes: Int32Array;
  latHundredths: Int16Array;
  lonHundredths: Int16Array;
}

const RAD_PER_HUNDREDTH = Math.PI / 18_000;

let made: ZipList | null = null;

/** Middle of one ZIP code, to about 1 km; null when the list does not have it. */
export function zipMiddle(code: number): Point | null {
  const { codes, latHundredths, lonHundredths } = zipList();
  let low = 0;
  let high = codes.length - 1;
  while (low <= high) {
    const mid = (low + high) >> 1;
    if (codes[mid] === code)
      return { latDeg: latHundredths[mid]! / 100, lonDeg: lonHundredths[mid]! / 100 };
    if (codes[mid]! < code) low = mid + 1;
    else high = mid - 1;
  }
  return null;
}

/**
 * Mean of the middles of all codes that `holds` accepts; null when there are none. The mean is taken
 * of directions in space, so places either side of the date line do not cancel.
 */
export function middleOfZips(holds: (code: number) => boolean): Point | null {
  const { codes, latHundredths, lonHundredths } = zipList();
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 0; i < codes.length; i++) {
    if (!holds(codes[i]!)) continue;
    const p = latHundredths[i]! * RAD_PER_HUNDREDTH;
    const l = lonHundredths[i]! * RAD_PER_HUNDREDTH;
    x += Math.cos(p) * Math.cos(l);
    y += Math.cos(p) * Math.sin(l);
    z += Math.sin(p);
  }
  if (x === 0 && y === 0 && z === 0) return null;
  const deg = 180 / Math.PI;
  return { latDeg: Math.atan2(z, Math.hypot(x, y)) * deg, lonDeg: Math.atan2(y, x) * deg };
}

/** All codes in the list, rising. */
export function zipCodes(): Int32Array {
  return zipList().codes;
}

function zipList(): ZipList {
  made ??= unpack();
  return made;
}

function unpack(): ZipList {
  const gaps = words(packed.gaps);
  const codes = new Int32Array(gaps.length);
  let code = 0;
  for (let i = 0; i < gaps.length; i++) {
    code += gaps[i]!;
    codes[i] = code;
  }
  return {
    codes,
    latHundredths: words(packed.latHundredths),
    lonHundredths: words(packed.lonHundredths),
  };
}

/** The build writes little-endian words, the order of every machine Node runs on but mainframes. */
function words(base64: string): Int16Array {
  return new Int16Array(new Uint8Array(Buffer.from(base64, 'base64')).buffer);
}
