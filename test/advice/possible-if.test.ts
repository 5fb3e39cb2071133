import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { shareOfJob } from '../../src/advice/beside';
import { firstWorth, type PossibleIf, possibleIf } from '../../src/advice/possible-if';
import { putIn } from '../../src/advice/put-in';
import { widthsOf } from '../../src/home/build-home';
import type { Answers } from '../../src/interview/answers';
import { isForGood } from '../../src/routes/stops/stop';
import { stopKindOf } from '../../src/routes/stops/stop-codes';
import { findings } from '../../src/rules/find';
import { bankOfFile } from '../bank-of-file';
import { answersOf } from '../households/read-household';
import { randomHome } from '../random-home';

const AS_OF = '2026-11-28';
const bank = bankOfFile(AS_OF);
const widths = widthsOf(interview);

function ifs(answers: Answers, advised = { usd: 0, share: 0, carefulHours: 0 }): PossibleIf[] {
  const { home, routes } = bank.trialOf(answers);
  return possibleIf({
    interview,
    answers,
    asOf: AS_OF,
    widths,
    home,
    routes,
    advised,
  });
}

const codes = (one: PossibleIf) => one.conditions.map(({ code }) => code);
const kinds = (one: PossibleIf) => one.routes.map(({ kind }) => kind);

const town = answersOf('mill-lane');

describe('a route closed by what can change is possible if', () => {
  test('a pad too close to a window: what a place 20 feet away would give, at its price', () => {
    const told = { ...town, 'engine-place': 'open-closer' };
    const block = ifs(told).find((one) => codes(one).join() === 'generator-place-too-close')!;
    expect(kinds(block)).toEqual(expect.arrayContaining(['engine-cords', 'engine-inlet']));
    expect(block.conditions[0]!.settles).toBe('household');
    const then = bank.trialOf({ ...told, 'engine-place': 'open-20ft' });
    for (const { kind, costUsd, lasting } of block.routes) {
      const route = then.routes.find((one) => one.kind === kind)!;
      expect([costUsd, lasting.hours]).toEqual([route.costUsd, route.lasting.hours]);
    }
  });

  test('a basement that was flooded: the battery on another wall', () => {
    const flood = { ...town, 'battery-place': 'basement', 'flood-history': 'inside' };
    const block = ifs(flood).find((one) => codes(one).includes('battery-below-flood'))!;
    expect(kinds(block)).toContain('battery-circuits');
  });

  test.each([
    ['nobody to run it', { operators: 'none' }, 'nobody-runs-it', 'helper'],
    ['a panel in trouble', { 'panel-signs': ['heat-or-buzz'] }, 'panel-in-trouble', 'electrician'],
    ['a rented house', { 'home-tenure': 'rent' }, 'owner-not-asked', 'owner'],
    ['gas nobody knows of', { 'gas-supply': 'not sure' }, 'gas-source-unknown', 'gas-company'],
    ['a roof nobody measured', { 'roof-face': 'not sure' }, 'roof-unknown', 'household'],
  ])('%s', (_, changed, code, settles) => {
    const block = ifs({ ...town, ...changed } as Answers).find(
      (one) => codes(one).join() === code,
    )!;
    expect(block.routes.length).toBeGreaterThan(0);
    expect(block.conditions).toEqual([{ code, settles }]);
  });

  test('a yes is added to those given before', () => {
    const answers = { permissions: ['insurer-told'], operators: 'none' };
    expect(putIn(answers, ['owner-not-asked']).permissions).toEqual([
      'insurer-told',
      'landlord-ok',
    ]);
    expect(putIn({ permissions: ['none'] }, ['owner-not-asked']).permissions).toEqual([
      'landlord-ok',
    ]);
  });
});

test('what can never be stays closed: no generator at an apartment, no place told as nowhere', () => {
  const flat = ifs({ ...answersOf('tower-six'), 'engine-place': 'not sure' });
  const nowhere = ifs({ ...town, 'engine-place': 'none' });
  for (const block of [...flat, ...nowhere]) {
    for (const kind of kinds(block)) expect(kind).not.toMatch(/engine/);
  }
});

test('a condition says nothing of the rest: what is unanswered stays a condition of the route', () => {
  const { 'panel-signs': _, 'main-amps': __, ...fewer } = town;
  const block = ifs({ ...fewer, 'engine-place': 'open-closer' }).find((one) =>
    kinds(one).includes('engine-inlet'),
  )!;
  const inlet = block.routes.find(({ kind }) => kind === 'engine-inlet')!;
  expect(inlet.verdict).toBe('works-if');
  expect(block.home.facts.told('panel-signs')).toBe(false);
  expect(inlet.ifs).toEqual(expect.arrayContaining(['panel-sound']));
});

test('random homes: only closed routes, never for good, only the conditions changed, all that can kill said', () => {
  let seen = 0;
  for (let seed = 1; seed <= 24; seed++) {
    const answers = randomHome(seed);
    const { routes } = bank.trialOf(answers);
    for (const block of ifs(answers)) {
      seen += 1;
      const changed = new Set(
        codes(block).flatMap((code) => Object.keys(stopKindOf(code).opens!.by)),
      );
      const then = putIn(answers, codes(block));
      for (const id of Object.keys(then))
        if (!changed.has(id)) expect(then[id]).toEqual(answers[id]);
      for (const { kind, verdict } of block.routes) {
        const now = routes.find((one) => one.kind === kind)!;
        expect([now.verdict, verdict !== 'cannot']).toEqual(['cannot', true]);
        expect(now.stops.some(isForGood)).toBe(false);
      }
      const anyway = findings(block.home, ['preparation']).map(({ id }) => id);
      const kill = findings(block.home, kinds(block)).filter(({ severity }) => severity === 5);
      expect(block.cautions.map(({ id }) => id)).toEqual(
        kill.map(({ id }) => id).filter((id) => !anyway.includes(id)),
      );
    }
  }
  expect(seen).toBeGreaterThan(12);
});

test('what does no more of the job than the one advised is not said to do more, and is nothing to find out first', () => {
  // Baseboard heat is more than any backup carries: the rest is the most there is.
  const cold = {
    ...town,
    ...{ 'heat-main': 'baseboard', 'must-run': ['heat', 'internet'], 'one-room': 'no' },
    'engine-place': 'open-closer',
  };
  const none = ifs(cold);
  const shares = none.flatMap(({ home, routes }) => routes.map((one) => shareOfJob(home, one)));
  const most = Math.max(...shares);
  expect(most).toBeGreaterThan(0.1);
  expect(most).toBeLessThan(1);
  expect(firstWorth(none)!.gain).toBe('more');
  const much = ifs(cold, { usd: 24_000, share: most, carefulHours: 1 });
  expect(firstWorth(much)!.gain).toBe('as-much-for-less');
  const beside = ifs(cold, { usd: 24_000, share: most, carefulHours: 1e6 });
  expect(beside.map(({ gain }) => gain)).toEqual(none.map(() => 'other-way'));
  expect(firstWorth(beside)).toBeNull();
});
