import fc from 'fast-check';
import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { remembered } from '../../src/advice/remembered';
import { type Trial, trials } from '../../src/advice/trial';
import { Facts } from '../../src/home/facts';
import { resolve } from '../../src/interview/questions/resolve';
import { bankOfFile } from '../bank-of-file';
import { answersOf } from '../households/read-household';
import { randomHome } from '../random-home';

const AS_OF = '2026-11-28';
const bank = bankOfFile(AS_OF);

const figures = ({ home, routes, advice }: Trial) => ({
  advised: advice.route.kind,
  beside: advice.beside.map(({ kind }) => kind),
  demand: home.demand,
  routes: routes.map(({ kind, costUsd, stops, carries, lasting }) => [
    kind,
    costUsd,
    stops,
    carries,
    lasting.hours,
  ]),
});

test('what was tried before does not change a trial: random homes, one answer taken away', () => {
  fc.assert(
    fc.property(fc.nat(), fc.nat(), (seed, n) => {
      const answers = randomHome(seed);
      const ids = Object.keys(answers);
      const { [ids[n % ids.length]!]: _, ...fewer } = answers;
      for (const some of [fewer, answers]) {
        expect(figures(bank.trialOf(some))).toEqual(figures(trials(interview, AS_OF)(some)));
      }
    }),
    { numRuns: 20, seed: 151 },
  );
});

test('an answer nothing asks for gives the very same trial', () => {
  const answers = answersOf('birch-street');
  const one = bank.trialOf(answers);
  expect(bank.trialOf({ ...answers, 'incentive-who': 'government' })).toBe(one);
  expect(bank.trialOf({ ...answers, 'engine-place': 'none' })).not.toBe(one);
});

test('what does not touch a route leaves it as it was, and what does makes it anew', () => {
  const answers = answersOf('birch-street');
  const kinds = (some: typeof answers) =>
    new Map(bank.trialOf(some).routes.map((route) => [route.kind, route]));
  const [before, after] = [kinds(answers), kinds({ ...answers, operators: 'none' })];
  expect(after.get('battery-circuits')).toBe(before.get('battery-circuits'));
  expect(after.get('engine-inlet')).not.toBe(before.get('engine-inlet'));
});

test('a function remembers by what it asks for, and by nothing else', () => {
  let made = 0;
  const wet = remembered((known) => {
    made += 1;
    const facts = new Facts(known);
    return facts.is('sump', 'none') ? 'dry' : facts.is('flood-history', 'never') ? 'pump' : 'wet';
  });
  const at = (answers: Record<string, string>) =>
    wet(resolve(interview.questions, { 'home-kind': 'house', ...answers }, 'assume'));
  expect([at({ sump: 'none' }), at({ sump: 'none', 'flood-history': 'inside' })]).toEqual([
    'dry',
    'dry',
  ]);
  expect(made).toBe(1);
  expect([at({ sump: 'one', 'flood-history': 'never' }), at({ sump: 'one' })]).toEqual([
    'pump',
    'wet',
  ]);
  expect(made).toBe(3);
});

test('what is asked for again and again stays, however much is tried beside it; what is not is forgotten', () => {
  let made = 0;
  const pumps = remembered((known) => {
    made += 1;
    return String(known.get('well-hp')?.value);
  });
  const at = (hp: number) => pumps(new Map([['well-hp', { value: hp, how: 'told' as const }]]));
  for (let hp = 1; hp <= 1000; hp++) expect([at(hp), at(0.5)]).toEqual([String(hp), '0.5']);
  expect(made).toBe(1001);
  expect([at(1000), made]).toEqual(['1000', 1001]);
  expect([at(1), made]).toEqual(['1', 1002]);
});
