import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../src/home/build-home';
import { Facts } from '../../src/home/facts';
import type { Load } from '../../src/home/home';
import { loadsOfHome } from '../../src/home/loads/loads-of-home';
import type { Answers } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import { offered, questionAt } from '../../src/interview/questions/relevant';
import { resolve } from '../../src/interview/questions/resolve';
import { randomHome } from '../random-home';

/** Loads no household ranks: they can always wait, and the plan sends them off from the start. */
const canAlwaysWait: readonly string[] = [
  'house-standby',
  'range',
  'ev-charger-240',
  'electric-dryer',
  'hot-tub',
  'washer',
  'dishwasher',
  'dehumidifier',
  'shop-tools',
  'second-ac',
];

const widths = widthsOf(interview);
const homes = Array.from({ length: 120 }, (_, n) => randomHome(n + 1));

const loadsOf = (answers: Answers): readonly Load[] => {
  const { usual, loads } = loadsOfHome(
    new Facts(resolve(interview.questions, answers, 'assume')),
    widths,
    null,
  );
  return [...usual, ...loads];
};

const keysOf = (id: 'must-run' | 'nice-run') =>
  interview.questions
    .find((one) => one.id === id)!
    .choices!.filter((choice) => choice.alone !== true)
    .map((choice) => choice.id);

test('what must run and what is good to have are asked in the same lines: mend the shorter list', () => {
  expect(keysOf('nice-run').sort()).toEqual(keysOf('must-run').sort());
});

test('each line of must-run ranks a load', () => {
  const idle = keysOf('must-run').filter((key) =>
    homes.every((home) => {
      const ranksWith = (ticked: string[]) =>
        loadsOf({ ...home, 'must-run': ticked, 'nice-run': ['none'] }).map((load) => load.rank);
      return ranksWith(['none']).join() === ranksWith([key]).join();
    }),
  );
  expect(idle, 'Give the load of the line its rank by rankOf(facts, [key]) in home/loads').toEqual(
    [],
  );
});

test('each load can be ranked, or is one that can always wait', () => {
  const all = new Set<string>();
  const ranked = new Set<string>();
  for (const home of homes) {
    for (const load of loadsOf({ ...home, 'must-run': keysOf('must-run') })) {
      all.add(load.id);
      if (load.rank === 'must') ranked.add(load.id);
    }
  }
  const never = [...all].filter((id) => !ranked.has(id) && !canAlwaysWait.includes(id));
  expect(
    never,
    'With every line of must-run ticked these still wait, so that each plan switches them off from the start: add a choice to living/must-run.yaml and living/nice-run.yaml and rank by it, or name the load in canAlwaysWait.',
  ).toEqual([]);
  expect(
    canAlwaysWait.filter((id) => !all.has(id) || ranked.has(id)),
    'Take these out of canAlwaysWait',
  ).toEqual([]);
});

test('what is told after the ranking is ranked by a question of its own, and never offered twice', () => {
  const told = { 'must-run': ['fridge'], 'big-loads': ['aquarium', 'radon-fan'] };
  const rankOf = (answers: Answers) => loadsOf(answers).find(({ id }) => id === 'aquarium')?.rank;
  expect(rankOf({ ...told, 'must-also': ['aquarium'] })).toBe('must');
  expect(rankOf({ ...told, 'must-also': ['none'] })).toBe('wait');
  const context = { interview, short: false, nameProblem: () => null, spareName: () => 'kim' };
  const nice = (answers: Answers) =>
    offered(context, { ...begin(context, {}), answers }, questionAt(context, 'nice-run')).map(
      ({ id }) => id,
    );
  expect(nice({ ...told, 'must-also': ['aquarium'] })).not.toContain('aquarium');
  expect(nice({ ...told, 'must-also': ['aquarium'] })).toContain('radon-fan');
  expect(nice(told)).not.toContain('fridge');
});
