import { describe, expect, test } from 'vitest';
import { hasGenerator, isPack, isWired } from '../../src/kinds/ask-traits';
import { traitsOf } from '../../src/kinds/route-traits';
import { firstSteps } from '../../src/papers/household/front/first-steps';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { familySheet } from '../../src/papers/sheets/family';
import { english } from '../../src/words/en';
import { planOf } from './read-household';

/** What a competent practitioner would say to six more homes before any money is spent: our judgement, not an outside check. */
const YEARS = 5;
const frontOf = (plan: ReturnType<typeof planOf>) =>
  planMarkdown(plan, english).split('\n# The details\n')[0]!.replace(/\s+/g, ' ');

const usd = (dollars: number) => `$${dollars.toLocaleString('en-US')}`;

describe('orchard-bend: $16,000, a propane tank, a wood stove, and a pad 6 ft from a window', () => {
  const plan = planOf('orchard-bend', {}, YEARS);
  const front = frontOf(plan);

  test('a place 20 feet off comes before any purchase, for it would do the whole job for less money', () => {
    expect(front).toMatch(/The whole job, for less money, would be possible if there is an open/);
    const ids = plan.nextSteps.map(({ id }) => id);
    expect(ids.indexOf('find-out-first')).toBeGreaterThan(-1);
    expect(ids.indexOf('find-out-first')).toBeLessThan(ids.indexOf('quotes'));
    expect(firstSteps(plan).map(({ id }) => id)).toContain('find-out-first');
    const [first] = plan.possibleIf;
    const cheap = first!.routes.filter(({ kind }) => hasGenerator(traitsOf[kind]));
    expect(Math.min(...cheap.map((route) => route.costUsd.value))).toBeLessThan(3000);
    expect(first!.routes.some(({ fuel }) => fuel?.fuel === 'propane')).toBe(true);
  });

  test('no generator is to be bought for 6 feet', () => {
    expect(hasGenerator(traitsOf[plan.advice.route.kind])).toBe(false);
    expect(front).not.toMatch(/What to buy: [^.]*generator/);
  });

  test('the wood stove heats, and neither furnace nor well is left out', () => {
    const { route } = plan.advice;
    expect(route.way).toBe('thrifty');
    expect(front).toContain('one room warmed by the stove, the main heat off');
    expect(front).toContain('What it carries: all that must keep running.');
    expect(route.carries).toContain('well');
  });

  test('the price fits, its high end does not: both the first page and the sheet of the family say so', () => {
    const { costUsd } = plan.advice.route;
    expect(costUsd.value).toBeLessThan(16000);
    expect(costUsd.high).toBeGreaterThan(16000);
    const over = `A quote may go to ${usd(costUsd.high)}, ${usd(costUsd.high - 16000)} above the $16,000 you told us.`;
    expect(front).toContain(over);
    expect(JSON.stringify(familySheet(plan, english).blocks)).toContain(over);
  });

  test('hours that count on thrift say so, and what they are as usual', () => {
    expect(front).toMatch(/That counts on living thriftily; as usual it lasts about \d+ h/);
    expect(front).not.toContain('Thriftily the odds are the same');
  });

  test('how much of what must run is carried is one count in details and list', () => {
    const text = planMarkdown(plan, english);
    expect(text).toContain('It carries all 7 that must keep running');
    expect(text).toContain('carries all 7 that must run');
    expect(text).not.toContain('It carries 5 of the 7');
  });
});

describe('sunny-fork: solar and a battery of its own', () => {
  test('that is not wired for outages: the wiring is what it buys, and no pack', () => {
    const unwired = { 'battery-backup': 'nothing', 'solar-in-outage': 'nothing' };
    const plan = planOf(
      'sunny-fork',
      { ...unwired, 'engine-place': 'none', 'budget-now': 5000 },
      YEARS,
    );
    const { route } = plan.advice;
    expect(route.kind).toBe('own-battery');
    expect(route.parts.map(({ equipmentClass }) => equipmentClass)).toContain('backup-subpanel');
    expect(route.lasting.reachesGoal).toBe(true);
    // Where a generator does it for less, the battery there is named beside it with its price.
    const yard = planOf('sunny-fork', unwired, YEARS);
    expect(isPack(traitsOf[yard.advice.route.kind])).toBe(false);
    expect(frontOf(yard)).toContain('What you have already: your home battery');
  });

  test('which runs the house already, so nothing is bought', () => {
    const plan = planOf('sunny-fork', {}, YEARS);
    expect(plan.advice.route.costUsd.high).toBe(0);
    expect(frontOf(plan)).toContain('What to buy: nothing. Use the home battery you have');
  });
});

describe('elm-row: not sure about a yard', () => {
  const plan = planOf('elm-row', {}, YEARS);

  test('is told what an open place would bring, and to look before it buys', () => {
    expect(frontOf(plan)).toMatch(
      /The whole job would be possible if there is an open, level place/,
    );
    const ids = plan.nextSteps.map(({ id }) => id);
    expect(ids.indexOf('find-out-first')).toBeLessThan(ids.indexOf('buy'));
    expect(plan.toFindOut[0]!.question).toBe('engine-place');
  });

  test('is not advised a generator that nobody knows a place for', () => {
    expect(hasGenerator(traitsOf[plan.advice.route.kind])).toBe(false);
  });
});

describe('upstairs-flat: a renter who will plug in a pack', () => {
  const plan = planOf('upstairs-flat', {}, YEARS);

  test('is not sent to find out about voltage, wiring or the bill', () => {
    const asked = plan.toFindOut.map(({ question }) => question);
    for (const id of ['supply-volts', 'wiring-signs', 'bill-kwh']) expect(asked).not.toContain(id);
  });

  test('plugs in, and calls no electrician', () => {
    expect(isPack(traitsOf[plan.advice.route.kind])).toBe(true);
    expect(isWired(traitsOf[plan.advice.route.kind])).toBe(false);
    expect(frontOf(plan)).toContain('Whom to call: no electrician for this route.');
  });

  test('is told all three ways to the whole job', () => {
    const { moreMoney, shorterGoal, lessCarried } = plan.advice.waysOn!;
    expect([moreMoney, shorterGoal, lessCarried]).not.toContain(null);
  });
});

describe('meadow-way: a baby, a heat pump, and a battery truck of 98 kWh', () => {
  const plan = planOf('meadow-way', { 'one-room': 'yes' }, YEARS);
  const { route } = plan.advice;

  test('one warm room: the truck feeds its wall outlets through an inlet, and a heater goes there', () => {
    expect(route.kind).toBe('vehicle-inlet');
    expect(route.carries).toContain('room-heater');
    expect(plan.advice.list[plan.advice.advised!]!.reaches).toBe(true);
    expect(plan.electricianFor).not.toBe('nothing');
  });

  test('nights without the heater, and when to leave with a baby, are said', () => {
    const front = frontOf(plan);
    expect(front).toMatch(/never while everybody sleeps/);
    expect(front).toMatch(/leave by 60 °F/);
  });
});

test('meadow-way, where the whole home is wished for: one warm room is the way on', () => {
  const plan = planOf('meadow-way', {}, YEARS);
  const { oneRoom } = plan.advice.waysOn!;
  expect(oneRoom).toMatchObject({ heats: true, units: ['room-heater'] });
  expect(oneRoom!.line).toMatchObject({ reaches: true, withinBudget: true });
  expect(oneRoom!.line.route!.kind).toBe('vehicle-inlet');
  // It is inside the money, so nothing may say that nothing within the money does the job.
  expect(oneRoom!.doesItWithin).toBe(true);
  const front = frontOf(plan);
  expect(front).toMatch(/Ways on, within your money, for the whole job: one warm room in place of/);
  expect(front).toMatch(
    /Decide together whether one warm room is enough for all of you; if it is, change/,
  );
  const text = planMarkdown(plan, english);
  expect(text).toContain('for 48 h with the whole home kept warm. With one warm room in its place');
  expect(english.whyAdvised(plan.advice.reason)).toContain(
    'does the whole job with the whole home warm; with one warm room in its place something does',
  );
  expect(plan.nextSteps.map(({ id }) => id)).toContain('one-room');
});

describe('gulf-cove: $14,000 in Florida, where heat makes somebody ill', () => {
  test('with no place for a generator, no cooling is said before what is bought, and when to leave', () => {
    const front = frontOf(planOf('gulf-cove', {}, YEARS));
    const at = (words: string) => front.indexOf(words);
    expect(at('Expect no cooling')).toBeGreaterThan(-1);
    expect(at('Expect no cooling')).toBeLessThan(at('What to buy'));
    expect(front).toMatch(/leave by 90 °F/);
    expect(front).toContain('Plan to leave.');
  });

  test('a power pack carries a room unit that starts softly, and not one of the usual kind', () => {
    const plan = planOf('gulf-cove', {}, YEARS);
    const { oneRoom } = plan.advice.waysOn!;
    expect(oneRoom).toMatchObject({ cools: true, heats: false, units: ['room-cooler'] });
    expect(oneRoom!.line).toMatchObject({ withinBudget: true, reaches: false });
    expect(oneRoom!.doesItWithin).toBe(false);
    expect(plan.nextSteps.map(({ id }) => id)).not.toContain('one-room');
    expect(oneRoom!.line.route!.kind).toBe('power-pack');
    expect(oneRoom!.line.route!.carries).toContain('room-cooler');
    expect(frontOf(plan)).toContain('for about 15 h on a hard day (careful count 5 h)');
    const usual = planOf('gulf-cove', { 'cool-main': 'room', 'room-cool-count': 1 }, YEARS);
    const pack = usual.routes.find((route) => route.kind === 'power-pack')!;
    expect(pack.leavesOut.find(({ load }) => load === 'room-ac')?.why.code).toBe(
      'too-hard-for-pack',
    );
  });

  test('the sheet for the family lays other equipment beside it, not the same lived with in another way', () => {
    const plan = planOf('gulf-cove', {}, YEARS);
    const lines = JSON.stringify(familySheet(plan, english).blocks);
    expect(lines).toMatch(/Next cheaper, \$870: small battery for one job \(1 kWh\)/);
    expect(lines).toMatch(/Next better, \$15,550: battery with roof solar/);
  });

  test('with an open place the cooling is carried, and one cool room is the way on to all three days', () => {
    const plan = planOf('gulf-cove', { 'engine-place': 'open-20ft' }, YEARS);
    expect(plan.advice.route.carries).toContain('central-ac');
    const { oneRoom } = plan.advice.waysOn!;
    expect(oneRoom).toMatchObject({ cools: true, heats: false });
    expect(oneRoom!.line.reaches).toBe(true);
    expect(oneRoom!.line.usd).toBeLessThan(3000);
  });
});
