import { expect, test } from 'vitest';
import { panelRoomKw } from '../../../src/physics/roof/panel-room';
import { usableRoof } from '../../../src/physics/roof/usable-roof';

test('500 ft2 at 200 W/m2 hold 500 x 0.0929 x 0.2 kW', () => {
  const room = panelRoomKw({ areaFt2: 500, wattsPerM2: 200, coveredShare: 1 });
  expect(room).toBeCloseTo(500 * 0.3048 ** 2 * 0.2, 10);
});

test('a face narrower than the path has no room, not less than none', () => {
  const rule = {
    ridgeSetbackIn: 18,
    pathwayIn: 36,
    planShareUpTo: 0.33,
    planShareUpToSprinklered: 0.66,
    exemptPitchRise: 2,
  };
  const face = { name: 'Back', eaveFt: 2, planDepthFt: 12, tiltDeg: 25 };
  const roof = { faces: [face], planFt2: 500, sprinklered: false };
  expect(usableRoof(roof, [rule]).totalFt2).toBe(0);
});
