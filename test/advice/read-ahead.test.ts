import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { askNext, nextInSteps } from '../../src/advice/ask-next';
import { bankOf } from '../../src/advice/effect-of-answers';
import { foundNext } from '../../src/advice/found-next';
import { answersAhead } from '../../src/advice/read-ahead';
import { inOnePiece } from '../../src/advice/steps';
import { NOT_SURE } from '../../src/interview/answers';
import { bankOfFile } from '../bank-of-file';
import { answersOf } from '../households/read-household';

const bank = bankOfFile('2026-11-28');
const house = answersOf('birch-street');
const question = (id: string) => interview.questions.find((one) => one.id === id)!;
const ahead = (id: string) => answersAhead(question(id), bank.knownOf(house));

test('what could be answered holds every choice and "not sure", the likeliest first, and nothing twice', () => {
  const places = ahead('gasoline-place');
  const ids = question('gasoline-place').choices!.map(({ id }) => id);
  expect([...places].sort()).toEqual([...ids, NOT_SURE].sort());
  expect(places[0]).toBe('attached-garage');
  for (const { id } of interview.questions) {
    const all = ahead(id).map((one) => JSON.stringify(one));
    expect(new Set(all).size, id).toBe(all.length);
    expect(all, id).toContain(JSON.stringify(NOT_SURE));
  }
});

test('of a number what is often typed goes first, and a sump amperage nobody reads is "not sure"', () => {
  expect(ahead('fridge-count').slice(0, 2)).toEqual([1, 2]);
  expect(ahead('sump-amps')[0]).toBe(NOT_SURE);
});

test('of a list every tick alone is among them too', () => {
  const lists = ahead('big-loads').map((one) => JSON.stringify(one));
  for (const { id } of question('big-loads').choices!)
    expect(lists).toContain(JSON.stringify([id]));
});

test('what was found before is there at once, whatever the order of the answers, and is what is found in one piece', () => {
  const { 'cook-main': _, cords: __, ...some } = house;
  const find = foundNext(bank);
  const steps = find(some);
  let count = 0;
  for (let step = steps.next(); ; step = steps.next(), count++) {
    if (step.done !== true) continue;
    expect(step.value).toEqual(askNext(some, bankOf(interview, '2026-11-28')));
    break;
  }
  expect(count).toBeGreaterThan(10);
  const turned = Object.fromEntries(Object.entries(some).reverse());
  expect(find(turned).next().done).toBe(true);
  expect(inOnePiece(find(turned))).toBe(inOnePiece(find(some)));
});

test('what was begun is gone on with, by whoever comes to it first', () => {
  const { 'cook-main': _, ...some } = house;
  const find = foundNext(bank);
  const [one, other] = [find(some), find(some)];
  for (let i = 0; i < 10; i++) one.next();
  const next = inOnePiece(other);
  expect(next).toEqual(askNext(some, bankOf(interview, '2026-11-28')));
  expect(one.next()).toEqual({ done: true, value: next });
});

test('what is laid down half way leaves nothing behind that changes what is found', () => {
  const { cords: _, ...some } = house;
  const steps = nextInSteps(some, bank);
  for (let i = 0; i < 15; i++) steps.next();
  expect(askNext(some, bank)).toEqual(askNext(some, bankOf(interview, '2026-11-28')));
});
