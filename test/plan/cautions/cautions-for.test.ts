import { expect, test } from 'vitest';
import { cautionsFor } from '../../../src/plan/cautions/cautions-for';
import { cannot } from '../../../src/routes/make-route';
import { houseWith } from '../electrical/electrical-home';

const lost = { heat: [] };
const generator = cannot('engine-cords', []);
const battery = cannot('battery-whole', []);
const idsAt = (place: string, beside = [battery]) =>
  cautionsFor(houseWith({ 'battery-place': place }), { route: generator, beside }, lost).map(
    ({ id }) => id,
  );

test('a fixed battery laid beside the advice brings the caution about charging below freezing', () => {
  expect(idsAt('shed-unheated')).toContain('no-freezing-charge');
  expect(idsAt('utility-room')).not.toContain('no-freezing-charge');
  expect(idsAt('shed-unheated', [])).not.toContain('no-freezing-charge');
});
