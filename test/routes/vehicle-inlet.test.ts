import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { vehicle, vehicleInlet } from '../../src/routes/kinds/vehicle';
import { findings } from '../../src/rules/find';
import { answersOf } from '../households/read-household';

const homeOf = (changed: Record<string, unknown>) =>
  homeFromAnswers(
    interview,
    { ...answersOf('meadow-way'), ...changed } as ReturnType<typeof answersOf>,
    '2026-11-25',
  );

const room = homeOf({ 'one-room': 'yes' });

describe('a battery truck of 98 kWh, and one room to keep warm', () => {
  test('a plug-in heater goes on a wall outlet that an inlet feeds, and on no cord', () => {
    const [cords, inlet] = [vehicle(room), vehicleInlet(room)!];
    expect(cords.carries).not.toContain('room-heater');
    expect(cords.leavesOut).toContainEqual(
      expect.objectContaining({ load: 'room-heater', why: { code: 'wall-outlet-only' } }),
    );
    expect(inlet.carries).toContain('room-heater');
    expect(inlet.lasting.hours!.value).toBeGreaterThan(40);
  });

  test('an electrician wires it, with a permit, once the maker says that it may', () => {
    const { ifs, parts, leavesOut } = vehicleInlet(room)!;
    expect(ifs).toEqual(expect.arrayContaining(['vehicle-may-feed-circuits', 'electrician-wires']));
    expect(parts.map(({ equipmentClass }) => equipmentClass)).toEqual([
      'inlet-interlock',
      'permit',
    ]);
    expect(leavesOut.every(({ load }) => load !== 'room-heater')).toBe(true);
    const ids = findings(room, ['vehicle-inlet']).map(({ id }) => id);
    expect(ids).toEqual(
      expect.arrayContaining([
        'no-backfeed',
        'neutral-bond',
        'permit-inspection',
        'interlock-order',
      ]),
    );
  });

  test('an outlet too weak for the heater leaves it out', () => {
    const weak = vehicleInlet(homeOf({ 'one-room': 'yes', 'vehicle-watts': 1500 }))!;
    expect(weak.carries).not.toContain('room-heater');
    expect(weak.carries).toContain('fridge');
  });
});

test('it carries a furnace on 120 volts, and nothing on 240', () => {
  const well = { 'water-source': 'well', 'well-hp': 0.5, 'well-volts': 'v240' };
  const must = { 'heat-main': 'gas-furnace', 'must-run': ['heat', 'well', 'fridge'] };
  const inlet = vehicleInlet(homeOf({ ...well, ...must }))!;
  expect(inlet.carries).toContain('furnace-gas');
  expect(inlet.carries).not.toContain('well');
});

test('no wiring where the panel is in trouble or the owner was not asked; none at all without a vehicle', () => {
  expect(vehicleInlet(homeOf({ 'panel-signs': ['burn-or-rust'] }))!.verdict).toBe('cannot');
  expect(vehicleInlet(homeOf({ 'home-tenure': 'rent' }))!.verdict).toBe('cannot');
  expect(vehicleInlet(homeOf({ 'own-sources': ['none'] }))).toBeNull();
});

test('a vehicle with an engine stays 20 feet from every opening', () => {
  const hybrid = { 'vehicle-kind': 'hybrid', 'engine-place': 'none' };
  expect(vehicleInlet(homeOf(hybrid))!.verdict).toBe('cannot');
});
