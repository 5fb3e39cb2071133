import { beforeAll, describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { askNext, type Next } from '../../src/advice/ask-next';
import { type Bank, bankOf, CHANGES_NOTHING, effectOf } from '../../src/advice/effect-of-answers';
import {
  type Candidate,
  decidesPurchase,
  heldByTheList,
  tryQuickly,
} from '../../src/advice/worth-asking';
import { type Answer, type Answers, NOT_SURE } from '../../src/interview/answers';
import { isToAsk } from '../../src/interview/questions/relevant';
import { resolve } from '../../src/interview/questions/resolve';
import { bankOfFile } from '../bank-of-file';
import { talkHomes } from '../bench/talk';
import { answersOf } from '../households/read-household';

const AS_OF = '2026-11-28';
const FIRST = [
  ...['now-danger', 'home-name', 'people-count', 'people-risk', 'medical-devices', 'home-zip'],
  ...['home-kind', 'home-tenure', 'water-source', 'heat-main', 'must-run', 'goal-hours'],
  ...['goal-season', 'engine-place', 'budget-now'],
];

/** The talk from the opening on, answered from a whole file, as long as something is asked. */
function talk(
  bank: Bank,
  file: Answers,
  told: readonly string[] = FIRST,
): { answers: Answers; asked: Next[] } {
  let answers: Record<string, Answer> = Object.fromEntries(
    Object.entries(file).filter(([id]) => told.includes(id)),
  );
  const asked: Next[] = [];
  for (let next = askNext(answers, bank); ; next = askNext(answers, bank)) {
    asked.push(next);
    if (next.code === 'enough') return { answers, asked };
    answers = { ...answers, [next.questionId]: file[next.questionId] ?? NOT_SURE };
  }
}

const file = answersOf('tower-six');
const house = answersOf('birch-street');
const bank = bankOfFile(AS_OF);
let whole: ReturnType<typeof talk>;
beforeAll(() => {
  whole = talk(bank, file);
});

const ids = (asked: readonly Next[]) =>
  asked.flatMap((next) => (next.code === 'ask' ? [next.questionId] : []));

test('a home is asked a fraction of its file, no question twice, and gets the advice of the whole file', () => {
  const asked = ids(whole.asked);
  expect(new Set(asked).size).toBe(asked.length);
  expect(Object.keys(whole.answers).length).toBeLessThan(Object.keys(file).length / 2);
  const [talked, told] = [bank.trialOf(whole.answers), bank.trialOf(file)];
  expect(talked.advice.route.kind).toBe(told.advice.route.kind);
  expect(talked.advice.route.costUsd.value).toBeCloseTo(told.advice.route.costUsd.value, -2);
});

test('the same answers give the same question, whatever was tried before and in whichever order they stand', () => {
  const half = Object.entries(whole.answers).slice(0, FIRST.length + 3);
  const turned = Object.fromEntries([...half].reverse());
  const fresh = bankOf(interview, AS_OF);
  expect(askNext(turned, fresh)).toEqual(askNext(Object.fromEntries(half), bank));
});

test('at the end no single answer left open changes what to buy', () => {
  const known = resolve(interview.questions, whole.answers, 'assume');
  // What is asked of nobody by itself, as what was measured, stays open for whoever has it.
  const open = interview.questions.filter(
    (one) => known.has(one.id) && isToAsk(one, whole.answers),
  );
  expect(open.length).toBeGreaterThan(20);
  const left = open.map((one) => effectOf(whole.answers, bank, one));
  expect(left.filter(({ ifTold }) => ifTold >= CHANGES_NOTHING)).toEqual([]);
  const last = whole.asked.at(-1)!;
  const sharper = left.filter(({ tried }) => tried.some(({ change }) => change.sharpens)).length;
  expect(last).toEqual({ code: 'enough', sharpen: sharper });
});

test('a safety question that could close a route on the table is asked before enough, and not of a flat', () => {
  const { operators: _, 'panel-signs': __, ...answers } = house;
  expect(ids(talk(bank, answers, Object.keys(answers)).asked)).toEqual(
    expect.arrayContaining(['operators', 'panel-signs']),
  );
  for (const id of ['operators', 'panel-signs', 'supply-volts', 'permissions'])
    expect(ids(whole.asked)).not.toContain(id);
});

test('what a battery that is there can do is asked before enough, and of a home without one not', () => {
  const details = ['battery-kind', 'battery-kwh', 'battery-kw', 'battery-backup'];
  const owns: Answers = { ...house, 'own-sources': ['home-battery'] };
  const { asked } = talk(bank, owns, Object.keys(owns));
  expect(ids(asked)).toEqual(expect.arrayContaining(details));
  const without = ids(talk(bank, house, Object.keys(house)).asked);
  for (const id of details) expect(without).not.toContain(id);
});

test('how a generator is connected is asked before enough, whatever is advised', () => {
  const owns: Answers = { ...house, 'own-sources': ['engine-portable'] };
  expect(ids(talk(bank, owns, Object.keys(owns)).asked)).toContain('engine-connect');
});

test('whether waste is pumped is asked of a home with water of its own before enough', () => {
  const { waste: _, 'waste-hp': __, ...answers } = house;
  const on = (water: string) => ({ ...answers, 'water-source': water });
  const asked = (home: Answers) => ids(talk(bank, home, Object.keys(home)).asked);
  for (const water of ['well', 'tank']) expect(asked(on(water))).toContain('waste');
});

describe('in a talk of a home with a well and a heat pump', () => {
  const far = talkHomes('test').get('blue-ridge')!;
  const having = (more: readonly string[]) =>
    Object.fromEntries([...opened, ...more].map((id) => [id, far[id] ?? NOT_SURE]));
  const opened = interview.opening.filter((id) => far[id] !== undefined);

  test('what decides what to buy is asked before what does a little more or less of the job', () => {
    const answers = having(['operators', 'own-sources']);
    const now = bank.trialOf(answers);
    const gasoline = interview.questions.find(({ id }) => id === 'gasoline-place')!;
    const panel = interview.questions.find(({ id }) => id === 'panel-signs')!;
    const [share, closing] = [gasoline, panel].map((one) => tryQuickly(answers, bank, one)) as [
      Candidate,
      Candidate,
    ];
    expect(share.weight).toBeGreaterThan(closing.weight);
    expect(decidesPurchase(now, heldByTheList(now, share)!)).toBe(false);
    expect(askNext(answers, bank)).toMatchObject({ questionId: 'panel-signs' });
  });

  test('what was found by whole files says what it decides, however seldom', () => {
    const answers = having([
      ...['operators', 'own-sources', 'panel-signs', 'waste', 'battery-place', 'gasoline-place'],
      ...['fridge-count', 'big-loads', 'work-gear', 'animals', 'water-heater', 'one-room'],
      ...['budget-later', 'gas-supply', 'heat-pump-tons', 'home-elevation'],
    ]);
    // It turns in one draw only, and its mean change is less than what a question is asked for by itself.
    expect(askNext(answers, bank)).toMatchObject({ openCount: 1, whyNow: { code: 'moves-price' } });
  });
});

test('the place of a generator says which route it decides, and by how many dollars', () => {
  const { 'engine-place': _, ...answers } = house;
  const opening = { ...interview, opening: [] };
  const next = askNext(answers, bankOf(opening, AS_OF));
  expect(next).toMatchObject({ questionId: 'engine-place', whyNow: { code: 'opens-route' } });
  const then = bank.trialOf({ ...answers, 'engine-place': 'open-20ft' }).advice.route;
  const now = bank.trialOf(answers).advice.route;
  expect(next).toMatchObject({
    whyNow: { route: then.kind, usd: Math.abs(then.costUsd.value - now.costUsd.value) },
  });
});

test('while the opening is open it goes on in its order', () => {
  const next = askNext({}, bank);
  expect(next).toMatchObject({ questionId: interview.opening[0], whyNow: { code: 'opening' } });
});

test('where somebody lives by a device, what makes the hour of leaving is asked before enough', () => {
  const leaving = { 'leave-place': 'other-place', 'trip-hours': 5, 'road-out': 'one' };
  const left = Object.keys(leaving);
  // All else is told, so that nothing but these could keep it from being enough.
  const told = Object.keys(house).filter((id) => !left.includes(id));
  const file = { ...house, ...leaving, 'medical-devices': ['ventilator'] };
  const { asked } = talk(bank, file, told);
  expect(ids(asked)).toEqual(expect.arrayContaining(left));
  const trip = asked.find((next) => next.code === 'ask' && next.questionId === 'trip-hours');
  expect(trip).toMatchObject({ whyNow: { code: 'when-to-leave' } });
});

test.each(['own-sources', 'big-loads'])(
  'what can hurt whatever is bought is asked before enough: %s',
  (id) => {
    const without = (answers: Answers) =>
      Object.fromEntries(Object.entries(answers).filter(([one]) => one !== id));
    expect(askNext(without(file), bank)).toMatchObject({ code: 'ask', questionId: id });
    expect(askNext(without(whole.answers), bank).code).toBe('ask');
  },
);
