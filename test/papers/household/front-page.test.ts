import { describe, expect, test } from 'vitest';
import { planLines } from '../../../src/faces/screen/plan/plan-lines';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import type { Plan } from '../../../src/plan/plan';
import { mustMissed } from '../../../src/routes/must-carried';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';
import { says } from '../../says';

/**
 * Letter paper with margins of an inch holds 54 lines at six to the inch. Nine of them are kept free, but not where
 * life hangs on a device: there more has to be said before what is bought. Common practice, no source.
 */
const PAGE_LINES = 54;
const KEPT_FREE = 9;

const lifeSupport = planOf('birch-street', {
  'medical-devices': ['oxygen-concentrator'],
  'second-source': ['none'],
  'device-safe-hours': 1,
});
const plans: [string, Plan][] = [
  ...['birch-street', 'tower-six', 'ridge-road', 'mill-lane'].map((name): [string, Plan] => [
    name,
    planOf(name),
  ]),
  ['a home with life support', lifeSupport],
];

function halves(plan: Plan): { front: string; details: string } {
  const [front, details, ...more] = planMarkdown(plan, english).split('\n# The details\n');
  expect(more).toEqual([]);
  return { front: front!, details: details! };
}

/** Numbers with what stands before them: "$1,770", "28 h", "3.5 kW". */
const figuresIn = (text: string) =>
  text.match(/\$?\d[\d,]*(\.\d+)?( (kWh|kW|W|VA|gal|gallons?|h|days|feet|°F|%))?/g) ?? [];

describe.each(plans)('the front page of %s', (_, plan) => {
  const { front, details } = halves(plan);

  test('is one page in 80 columns', () => {
    const limit = plan.lifeFirst?.told ? PAGE_LINES : PAGE_LINES - KEPT_FREE;
    expect(planLines(front, 80).length).toBeLessThanOrEqual(limit);
  });

  test('says the job, what to buy, how long, what not, whom to call, three cautions and three steps', () => {
    for (const head of [
      'The job:',
      plan.lifeFirst?.told ? 'Beside that, and only as a bridge:' : 'What to buy:',
      mustMissed(plan.home, plan.advice.route).length > 0 ? 'How long for the rest:' : 'How long:',
      'Whom to call:',
    ])
      expect(front).toContain(`- ${head}`);
    const missed = mustMissed(plan.home, plan.advice.route).length > 0;
    expect(front).toContain(
      missed
        ? '- What it does not carry, though it must keep running:'
        : '- What it carries: all that must keep running.',
    );
    const items = (title: string) =>
      front.split(`${title}\n\n`)[1]!.split('\n\n')[0]!.split('\n- ').length;
    expect(items('What can hurt here most:')).toBeGreaterThanOrEqual(3);
    expect(items('First steps:')).toBe(3);
  });

  test('says what is not carried before how long the rest of it lasts', () => {
    const missed = mustMissed(plan.home, plan.advice.route).length > 0;
    const [carries, howLong] = ['What it ', 'How long'].map((head) => front.indexOf(`- ${head}`));
    expect(carries).toBeGreaterThan(0);
    expect(carries).toBeLessThan(howLong!);
    expect(front.includes('- How long: ')).toBe(!missed);
  });

  test('holds no figure that the details do not', () => {
    const own = front.split('\n').filter((line) => !/^(# |DRAFT|As of)/.test(line));
    const body = new Set(figuresIn(details));
    const figures = figuresIn(own.join('\n'));
    expect(figures.length).toBeGreaterThan(2);
    expect(figures.filter((one) => !body.has(one))).toEqual([]);
  });

  test('says what the details say, word for word, where it warns and where it says when to leave', () => {
    for (const caution of plan.frontCautions) {
      const first = says(caution).split(/(?<=[.!?]) /)[0]!;
      expect(front).toContain(first);
      expect(details).toContain(first);
    }
    if (plan.home.lifeSupport === 'no') expect(front).not.toContain('Life support:');
    else {
      const line = english.leaving(plan.leavingPoint.find(({ code }) => code === 'device')!);
      expect(front).toContain(`- ${line}`);
      expect(details).toContain(line);
    }
  });

  test('says DRAFT when it is one', () => {
    expect(front.includes('DRAFT')).toBe(plan.state === 'draft');
  });
});

test('the front page warns of what this home and its route bring', () => {
  const ids = (plan: Plan) => plan.frontCautions.map((one) => one.id);
  expect(ids(planOf('birch-street'))).toEqual(
    expect.arrayContaining(['co-distance', 'water-and-electricity']),
  );
  expect(ids(planOf('tower-six'))).toEqual(
    expect.arrayContaining(['apartment-no-engine', 'cold-room', 'battery-smoke']),
  );
  expect(ids(lifeSupport)[0]).toBe('second-source');
  expect(lifeSupport.frontCautions.every((one) => one.severity === 5)).toBe(true);
});

test('the front page calls an electrician for what is wired, and for nothing else', () => {
  expect(halves(planOf('birch-street')).front).toMatch(
    /Whom to call: a licensed electrician, yes; the building department, for permit and inspection/,
  );
  expect(halves(planOf('tower-six')).front).toContain('Whom to call: no electrician');
  const bad = planOf('tower-six', { 'panel-signs': ['heat-or-buzz'], 'now-danger': ['hot-panel'] });
  expect(halves(bad).front).toContain('Whom to call: a licensed electrician, for the home');
});

test('where something that must run is left out, the front page names the cheapest route that does the whole job', () => {
  const plan = planOf('birch-street', { 'budget-now': 600, 'budget-later': 0 });
  expect(plan.advice.route.leavesOut.some((load) => load.must)).toBe(true);
  const whole = plan.routes.filter(
    (route) =>
      route.verdict !== 'cannot' && plan.mustRun.every((l) => route.carries.includes(l.id)),
  );
  const least = Math.min(...whole.map((route) => route.costUsd.value));
  const named = /Ways on, for the whole job: (\$[\d,]+) more \(\$([\d,]+) in all\) for the /.exec(
    halves(plan).front,
  )!;
  expect(Number(named[2]!.replace(',', ''))).toBe(least);
  expect(halves(planOf('birch-street')).front).not.toMatch(/Cheapest that does|Ways on/);
});

test('a vehicle with an outlet calls no electrician while nothing is wired to the house', () => {
  const plan = planOf('mill-lane', {
    'own-sources': ['ev-outlet'],
    'engine-place': 'none',
    'budget-later': 3000,
  });
  expect(plan.cautions.map((one) => one.id)).toContain('vehicle-house-ok');
  expect(plan.advice.route.kind).toBe('power-pack');
  expect(halves(plan).front).toContain('Whom to call: no electrician');
  expect(halves(plan).details).toContain('A vehicle may feed house wiring only through equipment');
  const required = halves(plan).details.split('## Where a licensed electrician is required')[1]!;
  expect(required.split('\n## ')[0]).not.toContain('A vehicle may feed house wiring');
});

describe('what this home told comes first', () => {
  const ids = (changed: Record<string, string | string[]>, name = 'mill-lane') =>
    planOf(name, changed).frontCautions.map((one) => one.id);

  test.each([
    ['a cord with two plugs', { 'own-sources': ['backfeed-cord'] }, 'backfeed-found'],
    ['charcoal indoors', { 'cook-without': ['charcoal-indoors'] }, 'charcoal-indoors'],
    ['an oven for heat', { 'heat-second': 'oven-or-grill' }, 'oven-heat'],
    ['a panel that gets hot', { 'panel-signs': ['heat-or-buzz'] }, 'hot-panel'],
    ['a scorched socket', { 'panel-signs': ['burn-or-rust'] }, 'hot-panel'],
  ])('%s', (_, changed, id) => {
    expect(ids(changed as Record<string, string | string[]>)[0]).toBe(id);
  });

  test('two deadly ones of one sort are both shown, and one of the route beside them', () => {
    const shown = ids({ 'own-sources': ['backfeed-cord'], 'panel-signs': ['heat-or-buzz'] });
    expect(shown.slice(0, 2).sort()).toEqual(['backfeed-found', 'hot-panel']);
    expect(shown).toContain('co-distance');
  });

  test('by season: heat where summers are hot, and no cold room where winters are mild', () => {
    const phoenix = ids({ 'home-zip': '85031', 'goal-season': 'summer' }, 'tower-six');
    expect(phoenix).toContain('heat-room');
    expect(phoenix).not.toContain('cold-room');
  });

  test('a caution about something nobody reported is no caution of the front page', () => {
    for (const name of ['birch-street', 'tower-six', 'ridge-road', 'mill-lane'])
      expect(planOf(name).frontCautions.filter((one) => one.careful)).toEqual([]);
  });
});

test('the first steps of a plan to buy something include buying it', () => {
  for (const name of ['birch-street', 'tower-six', 'ridge-road', 'mill-lane']) {
    const steps = halves(planOf(name)).front.split('First steps:')[1]!;
    expect(steps, name).toMatch(
      /- When the steps above are done(?: and \$540 more is there)?, buy|- Ask three licensed electricians/,
    );
  }
});

describe('a home with many things wrong as they are', () => {
  const plan = planOf('mill-lane', {
    'own-sources': ['engine-portable', 'backfeed-cord'],
    'engine-watts': 3500,
    'engine-stood': 'porch-carport',
    'engine-place': 'porch-carport',
    'panel-signs': ['heat-or-buzz'],
    'gasoline-place': 'attached-garage',
    'cook-without': ['charcoal-indoors'],
  });

  test('reads each of them on the first page, and the porch once', () => {
    const shown = plan.frontCautions.map((one) => one.id);
    expect(shown).toEqual(
      expect.arrayContaining([
        'hot-panel',
        'backfeed-found',
        'porch-carport',
        'charcoal-indoors',
        'fuel-in-wrong-place',
      ]),
    );
    expect(shown).not.toContain('engine-too-close');
  });
});

test('the leaving line of a person at risk goes by the season asked for', () => {
  const { front } = halves(planOf('tower-six', { 'home-zip': '85031', 'goal-season': 'summer' }));
  expect(front).toContain('act when the room reaches 86 °F');
  expect(front).not.toContain('65 °F');
});

test('a gas fitter is called for the house tank, and not for cans', () => {
  const tank = planOf('ridge-road');
  expect(tank.advice.route.fuel?.fuel).toBe('propane');
  expect(halves(tank).front).toContain('a gas fitter, for the fuel');
  expect(halves(planOf('mill-lane')).front).not.toContain('gas fitter');
});

test('what living thriftily takes is bought where the list of what each dollar buys counts it', () => {
  const plan = planOf('tower-six');
  const line = plan.advice.list[plan.advice.advised!]!;
  expect(line.way).toBe('thrifty');
  const dollars = line.usd - plan.advice.route.costUsd.value;
  expect(dollars).toBeGreaterThan(0);
  const thrift = `; and about $${dollars} for what living thriftily takes.`;
  expect(halves(plan).front).toMatch(/What to buy: .*living thriftily takes\./);
  expect(halves(plan).front).toContain(thrift);
  expect(plan.nextSteps.find(({ id }) => id === 'buy')).toMatchObject({ thriftUsd: dollars });
  expect(planMarkdown(plan, english).split('## Next steps')[1]).toContain(thrift);
});

test('a budget of nothing stands in the details as on the first page', () => {
  const nothing = { 'budget-now': 0, 'budget-later': 0 };
  const { advice, ...plan } = planOf('tower-six', nothing);
  // Without the list of what each dollar buys, which says it again beside some of its lines.
  const { front, details } = halves({ ...plan, advice: { ...advice, list: [], advised: null } });
  expect(front).toContain('above the $0 you told us');
  expect(details).toContain('above the $0 you told us');
});
