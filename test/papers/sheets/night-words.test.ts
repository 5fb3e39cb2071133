import { describe, expect, test } from 'vitest';
import { forTheNight, putRightBefore } from '../../../src/papers/sheets/cautions-on-sheets';
import { fridgeSheet } from '../../../src/papers/sheets/fridge';
import { leavingOnTheNight } from '../../../src/papers/sheets/leaving-on-the-night';
import type { LeavingLine } from '../../../src/plan/leaving-point';
import type { Plan } from '../../../src/plan/plan';
import type { Finding } from '../../../src/rules/rule';
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
  const ids = forTheNight(plan, english).map(({ id }) => id);
  expect(ids).toContain('co-distance');
  for (const id of ids) expect(said).toContain(english.sheets.night[id]);
  expect(said.match(/20 feet/g)).toHaveLength(1);
});

test('the order at the panel stands there as its steps alone', () => {
  for (const name of ['birch-street', 'ridge-road'])
    expect(forTheNight(planOf(name), english).map(({ id }) => id)).not.toContain('interlock-order');
});

const room = (code: 'cold' | 'heat', careful = false, oneRoad = false) => ({
  code,
  careful,
  oneRoad,
});

const leavingLines: readonly LeavingLine[] = [
  ...(
    [
      'order-or-danger',
      'co-alarm',
      'room-limits',
      'half-used-up',
      'powered-place',
      'choose-a-place',
      'pets-go-along',
      'animals-outside',
    ] as const
  ).map((code) => ({ code })),
  { code: 'one-road', careful: true },
  ...[false, true].flatMap((careful) =>
    [false, true].flatMap((oneRoad) => [
      room('cold', careful, oneRoad),
      room('heat', careful, oneRoad),
    ]),
  ),
];

test('when to leave keeps its temperatures and its number to call', () => {
  for (const line of leavingLines) {
    const short = english.sheets.nightLeaving(line);
    const whole = english.leaving(line);
    expect(short.length, line.code).toBeLessThan(whole.length);
    const figures = whole.match(/\d+( °F)?/g) ?? [];
    expect(short.match(/\d+( °F)?/g) ?? [], line.code).toEqual(figures);
  }
});

test('the limits of a cold and of a hot room share a line, and one told of above is not said again', () => {
  const lines = [room('cold', false), room('heat', true)];
  const both = leavingOnTheNight(lines, [], english);
  expect(both).toHaveLength(1);
  for (const limit of ['65 °F', '60 °F', '86 °F', '90 °F']) expect(both[0]).toContain(limit);
  expect(both[0]).not.toMatch(/^If /);
  const heat = { id: 'heat-room' } as Finding;
  const left = leavingOnTheNight(lines, [heat], english);
  expect(left).toEqual([english.sheets.nightLeaving(room('cold'))]);
  const oneRoad = room('heat', false, true);
  expect(leavingOnTheNight([oneRoad], [heat], english)).toHaveLength(1);
});

test('what is mended beforehand stands on the family sheet and leaves the night to what is done then', () => {
  const plan = planOf('birch-street');
  const wires = { ...plan.frontCautions[0]!, id: 'knob-and-tube' } as Finding;
  const told = { ...plan, frontCautions: [wires, ...plan.frontCautions] };
  const night = forTheNight(told, english);
  expect(night).not.toContain(wires);
  expect(night).toEqual(forTheNight(plan, english));
  expect(putRightBefore(told, english)).toContain(wires);
});

test('a plan that gives no power has no list of what goes off', () => {
  const plan = planOf('birch-street');
  const without = {
    ...plan,
    advice: { ...plan.advice, route: { ...plan.advice.route, kind: 'preparation' } },
  } as Plan;
  const headings = (one: Plan) => JSON.stringify(fridgeSheet(one, english).blocks);
  expect(headings(plan)).toContain(english.sheets.fridge.off);
  expect(headings(without)).not.toContain(english.sheets.fridge.off);
});

test('a home told to have no gas is asked for no gas shut-off and no gas supplier', () => {
  const { call } = english.sheets.fridge;
  const blanks = (plan: Plan) => {
    const { blocks } = fridgeSheet(plan, english);
    const at = blocks.findIndex((block) => block.kind === 'heading' && block.text === call);
    const names = blocks[at + 1]!;
    return 'names' in names ? names.names : [];
  };
  const gas = (plan: Plan) => blanks(plan).filter((name) => /gas/i.test(name));
  expect(gas(planOf('birch-street'))).toHaveLength(2);
  expect(gas(planOf('birch-street', { 'gas-supply': 'no-gas' }, 3))).toEqual([]);
});

test('what a second way lacks is said once on the family sheet where a device is told', () => {
  const plan = planOf('birch-street');
  const second = { ...plan.frontCautions[0]!, id: 'second-source' } as Finding;
  const told = { ...plan, frontCautions: [second] };
  expect(putRightBefore(told, english)).toContain(second);
  const lifeFirst = { told: true } as Plan['lifeFirst'];
  expect(putRightBefore({ ...told, lifeFirst }, english)).toEqual([]);
});

test('with piped gas, where nothing can be read, what goes off stands in its order in one line', () => {
  const plan = planOf('birch-street');
  const { route } = plan.advice;
  const piped = {
    ...plan,
    advice: {
      ...plan.advice,
      route: { ...route, usableKwh: null, fuel: { ...route.fuel!, atHand: null } },
    },
  };
  const said = (one: Plan) => JSON.stringify(fridgeSheet(one, english).blocks);
  const { strain } = english.sheets.reading;
  expect(plan.ladder.filter(({ atPercent }) => atPercent < 100).length).toBeGreaterThan(1);
  expect(said(piped).split(strain)).toHaveLength(2);
  expect(said(piped)).toContain(english.sheets.fridge.stillSo);
  expect(said(plan)).not.toContain(strain);
});

test('a danger told stands inside its sentence with a small letter', () => {
  expect(english.inSentence('A panel that is hot')).toBe('a panel that is hot');
  expect(english.inSentence('CPAP')).toBe('CPAP');
});
