import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../src/home/build-home';
import { generatorCords } from '../../src/routes/kinds/portable-generator';
import { standbyGenerator } from '../../src/routes/kinds/standby-generator';
import { houseWith } from '../plan/electrical/electrical-home';

const widths = widthsOf(interview);
const run = { 'must-run': ['fridge', 'lights'], 'fridge-count': 1, operators: 'two' };
const cords = (changed: object) => generatorCords(houseWith({ ...run, ...changed }), widths);

describe("the association's rule in its words", () => {
  const under = (rule: string[], more: object = {}) =>
    cords({ 'home-tenure': 'association', 'association-rule': rule, ...more });

  test('bars a generator, unless the association has agreed', () => {
    expect(under(['no-generator']).stops).toEqual([{ code: 'association-bars-generator' }]);
    expect(under(['no-generator'], { permissions: ['association-ok'] }).stops).toEqual([]);
    expect(under(['nothing']).stops).toEqual([]);
  });

  test('quiet hours are a condition', () => {
    expect(under(['quiet-hours']).ifs).toContain('quiet-hours');
    expect(under(['nothing']).ifs).not.toContain('quiet-hours');
  });
});

test('a propane tank that is rented, or nobody knows whose, needs its dealer in writing', () => {
  const ifs = (changed: object) =>
    standbyGenerator(
      houseWith({ ...run, 'gas-supply': 'propane-tank', ...changed }),
      widths,
    ).ifs.join();
  expect(ifs({ 'propane-tank-owner': 'rented' })).toContain('tank-dealer-agrees');
  expect(ifs({})).toContain('tank-dealer-agrees');
  expect(ifs({ 'propane-tank-owner': 'owned' })).not.toContain('tank-dealer-agrees');
});
