import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import interview from '#compiled/questions.js';
import { WEATHER_YEARS } from '../../src/home/weather/synthetic-years';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { planData } from '../../src/papers/plan-file/plan-data';
import { planJsonSchema, planSchema } from '../../src/papers/plan-file/plan-schema';
import { makePlan } from '../../src/plan/make-plan';
import type { Plan } from '../../src/plan/plan';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf, planOf } from '../households/read-household';

const demos = ['birch-street', 'tower-six', 'ridge-road', 'mill-lane'];

/** As data; a flat and a house with a well on as many years as a household's plan is counted in. */
const dataOf = (name: string) => {
  const whole = ['tower-six', 'ridge-road'].includes(name);
  return planData(whole ? planOf(name, {}, WEATHER_YEARS) : planOf(name), english);
};

describe('a plan', () => {
  test.each(demos)('of %s fits the published schema', (name) => {
    const read = planSchema.safeParse(dataOf(name));
    expect(read.error?.issues ?? []).toEqual([]);
  });

  test('is the same to the byte from run to run', () => {
    const once = (plan: Plan) => stringify(planData(plan, english)) + planMarkdown(plan, english);
    const before = planOf('birch-street', {}, 12);
    const afresh = makePlan(interview, answersOf('birch-street'), before.asOf, 12);
    expect(once(afresh)).toBe(once(before));
  });

  test('of no answers at all is a draft that asks, advises nothing wired, and shows what can kill', () => {
    const plan = makePlan(interview, {}, '2026-11-25', 3);
    expect(planSchema.safeParse(planData(plan, english)).error?.issues ?? []).toEqual([]);
    expect(plan.state).toBe('draft');
    expect(plan.home.lifeSupport).toBe('unknown');
    const grave = plan.cautions.filter((c) => c.severity === 5).map((c) => c.id);
    expect(grave).toEqual(
      expect.arrayContaining([
        'no-backfeed',
        'co-distance',
        'porch-carport',
        'co-alarm-first',
        'second-source',
        'leaving-point',
        'oven-heat',
        'charcoal-indoors',
      ]),
    );
    const generators = plan.routes.filter(
      (r) => r.kind.includes('engine') && r.verdict !== 'cannot',
    );
    expect(generators).toEqual([]);
    expect(planMarkdown(plan, english)).toContain('DRAFT');
  });

  test('says where its figures come from: every one in the data has a unit and a source', () => {
    const bare: string[] = [];
    const walk = (node: unknown, at: string): void => {
      if (node === null || typeof node !== 'object') return;
      const f = node as Record<string, unknown>;
      if (typeof f.value === 'number' && typeof f.low === 'number') {
        if (
          typeof f.unit !== 'string' ||
          f.unit === '' ||
          typeof f.from !== 'string' ||
          f.from === ''
        )
          bare.push(at);
        if (!((f.low as number) <= f.value && f.value <= (f.high as number)))
          bare.push(`${at} out of order`);
      }
      for (const [key, child] of Object.entries(f)) walk(child, `${at}.${key}`);
    };
    for (const name of demos) walk(dataOf(name), name);
    expect(bare).toEqual([]);
  });

  test('holds no broken number and no undefined anywhere', () => {
    for (const name of demos) {
      expect(stringify(dataOf(name))).not.toMatch(/\bNaN\b|Infinity|\.inf\b|\.nan\b|undefined/);
    }
  });

  test('has three sentences for the job, a leaving point and next steps with who does them', () => {
    for (const name of demos) {
      const plan = planOf(name);
      expect(english.job(plan.job, plan.home)).toHaveLength(3);
      expect(plan.leavingPoint.length).toBeGreaterThanOrEqual(4);
      for (const step of plan.nextSteps) expect(step.who.length).toBeGreaterThan(3);
    }
  });

  test('publishes its schema as JSON Schema', () => {
    expect(planJsonSchema()).toMatchObject({ type: 'object', additionalProperties: false });
  });
});

describe('the question a household cares about moves the plan', () => {
  test('a longer goal asks for more storage or fuel', () => {
    const day = planOf('mill-lane', { 'goal-hours': 24 });
    const week = planOf('mill-lane', { 'goal-hours': 168 });
    const need = (plan: typeof day) =>
      plan.routes.find((r) => r.kind === 'battery-circuits')!.sizeByOdds!.nineOutagesInTenKwh;
    expect(need(week)).toBeGreaterThan(3 * need(day));
  });

  test('an unknown engine place closes every engine route', () => {
    const plan = planOf('birch-street', { 'engine-place': 'not sure' });
    for (const kind of ['engine-cords', 'engine-inlet', 'standby-engine', 'battery-engine']) {
      expect(plan.routes.find((r) => r.kind === kind)!.verdict).toBe('cannot');
    }
  });

  test('a life-support device without a second way keeps the plan a draft', () => {
    const plan = planOf('birch-street', {
      'medical-devices': ['oxygen-concentrator'],
      'second-source': ['none'],
      'device-safe-hours': 1,
    });
    expect(plan.state).toBe('draft');
    expect(plan.draftBecause.map((why) => why.id)).toContain('no-second-way');
    expect(plan.leavingPoint.map(english.leaving).join(' ')).toMatch(
      /three times your trip|the trip is not known/,
    );
    expect(plan.cautions.map((c) => c.id)).toEqual(
      expect.arrayContaining(['second-source', 'leaving-point', 'oxygen-fire']),
    );
  });

  test('heat is switched off for comfort only where cold makes nobody ill', () => {
    const offAt = (changed: Record<string, string | string[]>) =>
      // The order looks at no odds, so three drawn years are enough.
      frozenPlan({ ...answersOf('ridge-road'), ...changed }, '2026-11-25', 3).ladder.find((step) =>
        step.switchOff.includes('heat-pump'),
      )!.atPercent;
    expect(offAt({ 'heat-cold': 'neither', 'people-risk': ['none'] })).toBe(50);
    expect(offAt({ 'heat-cold': 'neither', 'people-risk': ['over-65'] })).toBe(15);
    expect(offAt({ 'heat-cold': 'cold', 'people-risk': ['none'] })).toBe(15);
    expect(offAt({ 'heat-cold': 'heat', 'people-risk': ['none'] })).toBe(50);
    expect(offAt({ 'heat-cold': 'not sure', 'people-risk': ['none'] })).toBe(15);
  });

  test('life support is never on the ladder', () => {
    const plan = planOf('birch-street', {
      'medical-devices': ['oxygen-concentrator', 'ventilator'],
    });
    const off = plan.ladder.flatMap((step) => step.switchOff);
    expect(off).not.toContain('oxygen-concentrator');
    expect(off).not.toContain('ventilator');
  });
});
