import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/interview/answers';
import { answersOf } from '../households/read-household';
import { answeredHome } from '../rules/some-home';
import { held } from './never';
import { type Seen, seenOf } from './seen';

describe('a broken plan is found', () => {
  const life: Answers = { 'medical-devices': ['oxygen-concentrator'], 'second-source': ['none'] };
  const birch = seenOf(answersOf('birch-street'));
  const living = seenOf({ ...answersOf('birch-street'), ...life });
  const wall = seenOf({
    ...answersOf('birch-street'),
    'battery-place': 'outside-wall',
    'home-zip': '55731',
    'flood-history': 'never',
  });

  /** The same plan for a home that tells something else. */
  const told = (seen: Seen, changed: Answers): Partial<Seen> => {
    const { facts } = answeredHome({ ...seen.answers, ...changed });
    return { plan: { ...seen.plan, home: { ...seen.plan.home, facts } } };
  };
  const advised = ({ plan }: Seen, part: object): Partial<Seen> => {
    const route = { ...plan.advice.route, ...part };
    const routes = plan.routes.map((one) => (one.kind === route.kind ? route : one));
    return { plan: { ...plan, routes, advice: { ...plan.advice, route } } };
  };
  const electrical = ({ plan }: Seen, part: object): Partial<Seen> => ({
    plan: { ...plan, electrical: { ...plan.electrical, ...part } },
  });

  const broken: readonly [keyof typeof held, Seen, Partial<Seen>][] = [
    ['the form of the plan file', birch, { data: { ...birch.data, seed: 0.5 } }],
    ['sound figures in every paper', birch, { text: `${birch.text} NaN W` }],
    ['no control byte', birch, { file: `${birch.file}\u001b[2J` }],
    ['no generator without an open place', birch, told(birch, { 'engine-place': 'open-closer' })],
    ['no generator without an open place', birch, told(birch, { 'engine-place': 'not sure' })],
    ['no generator without an open place', birch, told(birch, { 'home-kind': 'apartment' })],
    ['no battery where it may not stand', wall, told(wall, { 'battery-place': 'bedroom-living' })],
    ['nothing wired where it may not be', birch, told(birch, { 'home-tenure': 'rent' })],
    ['life before buying', living, { text: `${living.text} What to buy: a battery.` }],
    ['life before buying', living, { plan: { ...living.plan, lifeFirst: null } }],
    [
      'no complete plan without a second way',
      living,
      { plan: { ...living.plan, state: 'complete' } },
    ],
    [
      'no electronics curve for a medical device',
      living,
      electrical(living, { transferPoints: [] }),
    ],
    ['deadly cautions whole', birch, { text: birch.front }],
    ['permits and cords', birch, { text: `${birch.text} It works without a permit.` }],
    [
      'no illness for the electrician',
      living,
      electrical(living, { scope: { circuits: ['oxygen'] } }),
    ],
    [
      'one price in all papers',
      birch,
      { text: birch.text.replace(/installed \$[\d,]+ \(\$[\d,]+ to/, 'installed $$9 ($$9 to') },
    ],
    [
      'one count of hours in all papers',
      birch,
      { front: birch.front.replace(/careful count \d+ h/, 'careful count 1 h') },
    ],
    [
      'one count of things in all papers',
      birch,
      { text: birch.text.replace(/It carries all (\d+)/g, 'It carries all 1$1') },
    ],
    [
      'one count of gallons in all papers',
      birch,
      { front: birch.front.replace(/cans for \d+ more gal/, 'cans for 99 more gal') },
    ],
    [
      'one price of what stands beside',
      birch,
      { front: birch.front.replace(/(second sump pump[^$]*)\$\d+/, '$1$$1') },
    ],
    [
      'nobody to call, and no work for one',
      birch,
      {
        front: birch.front.replace('a licensed electrician, yes', 'no electrician for this route'),
      },
    ],
    [
      'figures of the first page in the details',
      birch,
      { front: `${birch.front} It costs $98,765.` },
    ],
    [
      'figures of the first page as planned',
      birch,
      { front: birch.front.replaceAll('3 days', '2 days') },
    ],
    [
      'figures of the first page as planned',
      birch,
      advised(birch, { costUsd: { ...birch.plan.advice.route.costUsd, value: 999 } }),
    ],
    [
      'hours with the cans filled',
      birch,
      { plan: { ...birch.plan, fuelToStore: { ...birch.plan.fuelToStore!, thenHours: 9 } } },
    ],
    ['the pane as the plan', birch, { answers: { ...birch.answers, 'must-run': ['fridge'] } }],
    ['parts add up', birch, advised(birch, { parts: [] })],
    ['no hole in the summary', birch, { text: `${birch.text}\nThriftily means: .` }],
    [
      'figures of the plan file as planned',
      birch,
      advised(birch, { costUsd: { ...birch.plan.advice.route.costUsd, value: 999 } }),
    ],
  ];

  test.each(broken)('%s', (what, seen, part) => {
    expect(held[what]!(seen) ?? []).toEqual([]);
    expect(held[what]!({ ...seen, ...part }) ?? []).not.toEqual([]);
  });
});
