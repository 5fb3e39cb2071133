import { expect, test } from 'vitest';
import { panelRoomKw } from '../../../src/physics/roof/panel-room';
import { roofDoubts } from '../../../src/physics/roof/roof-doubts';
import { usableRoof } from '../../../src/physics/roof/usable-roof';

const good = { name: 'Back', eaveFt: 30, planDepthFt: 12, tiltDeg: 25 };

test('a face that hangs over is left out and the reason given, the others stay', () => {
  const { faces, sentences } = roofDoubts({
    faces: [good, { ...good, name: 'Front', tiltDeg: 120 }],
    groundFloorFt2: 1200,
  });
  expect(faces).toEqual([good]);
  expect(sentences).toEqual([
    'Front: a slope of 120 degrees would hang over; 90 is a wall; this face is left out.',
  ]);
});

test('a roof larger than the house can carry is doubted in a sentence', () => {
  const { faces, sentences } = roofDoubts({
    faces: [{ ...good, eaveFt: 100, planDepthFt: 50 }],
    groundFloorFt2: 1200,
  });
  expect(faces).toHaveLength(1);
  expect(sentences[0]).toMatch(/cover 5000 ft2, more than the 1200 ft2 of ground floor/);
});

test('nothing is doubted when the ground floor is not known or the roof fits', () => {
  expect(roofDoubts({ faces: [good], groundFloorFt2: null }).sentences).toEqual([]);
  expect(roofDoubts({ faces: [good], groundFloorFt2: 1200 }).sentences).toEqual([]);
});

test.each([
  [{ eaveFt: 0 }, /more than zero/],
  [{ planDepthFt: Number.NaN }, /more than zero/],
  [{ tiltDeg: -5 }, /0 degrees/],
  [{ tiltDeg: 88 }, /a wall, not a roof/],
])('a face with %o is left out', (wrong, reason) => {
  const { faces, sentences } = roofDoubts({ faces: [{ ...good, ...wrong }], groundFloorFt2: null });
  expect(faces).toEqual([]);
  expect(sentences[0]).toMatch(reason);
});

test('a face narrower than the path has no room, not less than none', () => {
  const rule = {
    ridgeSetbackIn: 18,
    pathwayIn: 36,
    planShareUpTo: 0.33,
    planShareUpToSprinklered: 0.66,
    exemptPitchRise: 2,
  };
  const roof = { faces: [{ ...good, eaveFt: 2 }], planFt2: 500, sprinklered: false };
  expect(usableRoof(roof, [rule]).totalFt2).toBe(0);
});

test('500 ft2 at 200 W/m2 hold 500 x 0.0929 x 0.2 kW', () => {
  const room = panelRoomKw({ areaFt2: 500, wattsPerM2: 200, coveredShare: 1 });
  expect(room).toBeCloseTo(500 * 0.3048 ** 2 * 0.2, 10);
});
