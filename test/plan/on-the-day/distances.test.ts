import { describe, expect, test } from 'vitest';
import { picturesOf } from '../../../src/papers/pictures/of-plan/pictures-of';
import { distances } from '../../../src/plan/on-the-day/distances';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const of = (name: string, changed = {}) => {
  const { home, advice } = planOf(name, changed);
  return distances(home, advice.route);
};

describe('distances drawn', () => {
  test('are every one told: the generator to its nearest opening and the panel to the wall', () => {
    expect(of('birch-street')).toEqual([
      { id: 'generator-to-opening', toldFeet: 20, leastFeet: 20 },
      { id: 'panel-to-wall', toldFeet: 12, leastFeet: null },
    ]);
  });

  // IRC 2021 R328.3: 3 feet from doors and windows that open into the home.
  test('keep a fixed battery 3 feet from openings, though nobody has measured it', () => {
    const { home, advice } = planOf('birch-street');
    const drawn = distances(home, { ...advice.route, kind: 'battery-circuits' });
    expect(drawn[0]).toEqual({ id: 'battery-to-opening', toldFeet: null, leastFeet: 3 });
  });

  test('are none of a home that plugs a pack in', () => {
    expect(of('tower-six')).toEqual([]);
  });

  test('stand in the drawing, the terminal and the table alike', () => {
    const picture = picturesOf(planOf('birch-street'), english).get('siting')!;
    const name = english.sheets.pictures.siting.names['panel-to-wall'];
    expect(JSON.stringify(picture.drawing.marks)).toContain(name);
    expect(picture.inTerminal(80, 'ascii').join('\n')).toContain(name);
    expect(picture.table.rows).toContainEqual([name, '12 ft', 'none asked']);
  });
});
