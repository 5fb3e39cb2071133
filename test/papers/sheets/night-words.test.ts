import { describe, expect, test } from 'vitest';
import { forTheNight } from '../../../src/papers/sheets/cautions-on-sheets';
import { fridgeSheet } from '../../../src/papers/sheets/fridge';
import { type RuleId, ruleOf } from '../../../src/tables/rules';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const night = Object.entries(english.sheets.night) as [RuleId, string][];

describe.each(night)('%s, said for the night', (id, says) => {
  const whole = english.rules[id].says;

  test('keeps every distance, temperature, time and number to call of the whole caution', () => {
    const figures = (text: string) => text.match(/\d+( ?(feet|°F|minutes?))?/g) ?? [];
    expect(figures(says)).toEqual(expect.arrayContaining(figures(whole)));
  });

  test('is shorter, says what to do, and kills or harms', () => {
    expect(says.length).toBeLessThan(whole.length);
    expect(says.length).toBeLessThanOrEqual(200);
    expect(ruleOf(id).severity).toBeGreaterThanOrEqual(4);
    expect(says).toMatch(
      /\b(go|out|outdoors|outside|never|do not|call|stay|keep|use|leave|eat|stands)\b/i,
    );
  });
});

test('the sheet for the night says what kills in these words, and its place of the generator once', () => {
  const plan = planOf('birch-street');
  const said = JSON.stringify(fridgeSheet(plan, english).blocks);
  const ids = forTheNight(plan).map(({ id }) => id);
  expect(ids).toContain('co-distance');
  for (const id of ids) expect(said).toContain(english.sheets.night[id]);
  expect(said.match(/20 feet/g)).toHaveLength(1);
});

test('the order at the panel stands there as its steps alone', () => {
  for (const name of ['birch-street', 'ridge-road'])
    expect(forTheNight(planOf(name)).map(({ id }) => id)).not.toContain('interlock-order');
});

test('when to leave keeps its temperatures and its number to call', () => {
  const { leavingPoint } = planOf('birch-street');
  for (const line of leavingPoint) {
    const short = english.sheets.nightLeaving[line.code];
    const whole = english.leaving(line);
    if (short === undefined) continue;
    expect(short.length, line.code).toBeLessThan(whole.length);
    const figures = whole.match(/\d+( °F)?/g) ?? [];
    expect(short.match(/\d+( °F)?/g) ?? [], line.code).toEqual(figures);
  }
});
