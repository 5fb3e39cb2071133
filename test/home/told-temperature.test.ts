import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { placeRecordLowC, siteRecordLowC } from '../../src/home/weather/record-low';
import { relevant } from '../../src/interview/questions/relevant';
import { comfortLost } from '../../src/plan/ladder/comfort-lost';
import { houseWith } from '../plan/electrical/electrical-home';

const asked = (answers: object) =>
  relevant({ interview, short: false } as never, answers as never)
    .map(({ id }) => id)
    .filter((id) => id.startsWith('place-'));
const nowhere = { 'home-zip': 'not sure', 'goal-season': 'winter', 'heat-main': 'gas-furnace' };

test('cold and heat of the place are asked only where no ZIP code was told', () => {
  expect(asked({ 'home-zip': 'not sure' })).toEqual(['place-lowest', 'place-highest']);
  expect(asked({ 'home-zip': '48911' })).toEqual([]);
});

test('what was told sets the cold and the heat to be ready for', () => {
  const { site } = houseWith({ ...nowhere, 'place-lowest': -40, 'place-highest': 112 });
  expect([site.coldF, site.hotF]).toEqual([-40, 112]);
});

test('what a row of panels must bear is the remembered cold and 5 °C more, by hand', () => {
  // -40 F is -40 C; 50 F is 10 C.
  expect(siteRecordLowC(houseWith({ ...nowhere, 'place-lowest': -40 }).site)).toBeCloseTo(-45, 9);
  expect(siteRecordLowC(houseWith({ ...nowhere, 'place-lowest': 50 }).site)).toBeCloseTo(5, 9);
  const { site } = houseWith({ 'home-zip': '48911' });
  expect(siteRecordLowC(site)).toBe(placeRecordLowC(site.place));
});

test('where it never gets cold, no heat is no harm', () => {
  const lost = (lowest: number) =>
    comfortLost(houseWith({ ...nowhere, 'place-lowest': lowest }), { carries: [] }).heat;
  expect(lost(55)).toEqual([]);
  expect(lost(10)).not.toEqual([]);
});

test('a ZIP code told goes before a temperature told earlier', () => {
  const { site } = houseWith({ 'place-lowest': -40 });
  expect(site.coldF).toBeGreaterThan(-40);
});
