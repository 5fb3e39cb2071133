import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../../src/home/build-home';
import { levelOf } from '../../../src/plan/markdown/say-ladder';
import { standbyEngine } from '../../../src/routes/kinds/standby-engine';
import { houseWith } from '../electrical/electrical-home';

test('the order of switching off names a level only of what has a gauge', () => {
  const on = (gas: string) =>
    standbyEngine(
      houseWith({ 'gas-supply': gas, 'must-run': ['fridge'], 'fridge-count': 1 }),
      widthsOf(interview),
    );
  expect(levelOf(on('town-gas'), 70)).not.toContain('%');
  expect(levelOf(on('propane-tank'), 70)).toBe('At 70 % of fuel');
  expect(levelOf({ ...on('propane-tank'), usableKwh: 9 }, 70)).toBe('At 70 % of charge or fuel');
  expect(levelOf({ ...on('town-gas'), usableKwh: 9 }, 70)).toBe('At 70 % of charge');
});
