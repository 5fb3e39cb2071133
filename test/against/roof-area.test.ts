import { describe, expect, test } from 'vitest';
import { tiltOfPitch } from '../../src/physics/roof/roof-face';
import { usableRoof } from '../../src/physics/roof/usable-roof';
import { roofPathways } from '../../src/tables/roof-pathways';

// A gable roof worked by hand from IRC 2021 R324.6.1 and R324.6.2: eave 40 ft, plan 40 x 30 ft, 6 in 12,
// panels on one face with a 36 in path on it, so 37 ft wide and 15 x sqrt(1.25) = 16.77 ft up the slope.
const face = { name: 'south', eaveFt: 40, planDepthFt: 15, tiltDeg: tiltOfPitch(6) };
const roof = { faces: [face], planFt2: 1200, sprinklered: false };
const slopeFt = 15 * Math.sqrt(1.25);
const [narrow, wide] = roofPathways.rows;

describe('a gable roof by IRC R324.6', () => {
  test('18 in at the ridge fills 37 x (16.77 - 1.5) = 565 ft2, but a third of the roof holds it to 442.7', () => {
    const usable = usableRoof(roof, [narrow!]);
    expect(37 * (slopeFt - 1.5)).toBeCloseTo(565, 0);
    expect(usable.totalFt2).toBeCloseTo(0.33 * 1200 * Math.sqrt(1.25), 6);
    expect(usable.totalFt2).toBeCloseTo(442.7, 1);
    expect(usable.heldByShare).toBe(true);
  });

  test('36 in at the ridge leaves 37 x (16.77 - 3) = 509.5 ft2', () => {
    expect(usableRoof(roof, [wide!]).totalFt2).toBeCloseTo(37 * (slopeFt - 3), 6);
  });

  test('the better of the two is the wider strip', () => {
    const usable = usableRoof(roof, roofPathways.rows);
    expect(usable.totalFt2).toBeCloseTo(509.5, 0);
    expect(usable.ridgeSetbackIn).toBe(36);
  });

  test('with sprinklers the narrow strip holds to two thirds, so all 565 ft2 are open', () => {
    const usable = usableRoof({ ...roof, sprinklered: true }, roofPathways.rows);
    expect(usable.totalFt2).toBeCloseTo(37 * (slopeFt - 1.5), 6);
    expect(usable.ridgeSetbackIn).toBe(18);
  });

  test('a roof of 2 in 12 or flatter needs no strips', () => {
    const flat = { ...face, tiltDeg: tiltOfPitch(2) };
    const usable = usableRoof({ ...roof, faces: [flat] }, roofPathways.rows);
    expect(usable.totalFt2).toBeCloseTo(40 * 15 * Math.hypot(1, 2 / 12), 6);
    expect(usable.ridgeSetbackIn).toBe(0);
  });
});
