import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { givesWatts } from '../../../src/plan/electrical/high-end';
import { givesPower } from '../../../src/plan/electrical/route-traits';
import type { Plan } from '../../../src/plan/plan';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const birch = planOf('birch-street');
const plans = [birch, ...['tower-six', 'ridge-road', 'mill-lane'].map((name) => planOf(name))];

const gapsOf = (plan: Plan) =>
  plan.electrical.highEnd.filter((gap) => gap.route === plan.advice.route.kind);

describe('a need that may be more than the route gives', () => {
  test('of birch-street is said with both figures, once, under the route, and acted on in the next steps', () => {
    const running = gapsOf(birch).find((gap) => gap.what === 'running')!;
    // By hand: the high ends of the eight loads carried, as the table of loads prints them, and the microwave's.
    const high = 828 + 552 + 250 + 150 + 250 + 40 + 25 + 1600;
    expect(Math.round(running.asks)).toBe(high);
    const text = planMarkdown(birch, english);
    const need = 'the need is 3,695 W; it gives 3,395 W';
    expect(text.split(need)).toHaveLength(2);
    expect(text.split('## The one advised')[1]!.split('\n## ')[0]).toContain(need);
    const steps = birch.nextSteps.map((step) => english.step(step, birch.home));
    expect(steps.find((step) => step.startsWith('Measure'))).toContain(
      'switch the microwave oven off first',
    );
  });

  test('is found for every kind of route that gives power, and only where it is so', () => {
    const seen = new Set<string>();
    for (const plan of plans) {
      for (const route of plan.routes.filter(givesPower)) {
        if (route.kind === 'single-battery' && route.carries.includes('sump')) continue;
        seen.add(route.kind);
        const found = (what: string) =>
          plan.electrical.highEnd.some((gap) => gap.route === route.kind && gap.what === what);
        expect(found('running'), route.kind).toBe(
          route.power!.runningWatts.high > givesWatts(route),
        );
        expect(found('starting'), route.kind).toBe(
          route.power!.startDemandVa.high > route.power!.startVa,
        );
      }
    }
    expect([...seen].sort()).toEqual(
      expect.arrayContaining([
        'engine-cords',
        'engine-inlet',
        'standby-engine',
        'power-pack',
        'battery-circuits',
        'battery-engine',
      ]),
    );
  });

  test('is mended by what is named to go off first: the rest fits even at its high end', () => {
    let mended = 0;
    for (const plan of plans) {
      for (const gap of plan.electrical.highEnd.filter((one) => one.what === 'running')) {
        if (gap.offFirst.length === 0) continue;
        const route = plan.routes.find((one) => one.kind === gap.route)!;
        const rest = plan.home.loads.filter(
          (load) => route.carries.includes(load.id) && !gap.offFirst.includes(load.id),
        );
        const high = rest.reduce((sum, load) => sum + load.runningWatts.high, 0);
        expect(high).toBeLessThanOrEqual(gap.gives);
        expect(rest.length).toBeGreaterThan(0);
        mended += 1;
      }
    }
    expect(mended).toBeGreaterThan(0);
  });

  test('never sends a device for health off first', () => {
    const plan = planOf('birch-street', { 'medical-devices': ['oxygen-concentrator'] });
    for (const gap of plan.electrical.highEnd) {
      expect(gap.offFirst).not.toContain('oxygen-concentrator');
    }
  });
});
