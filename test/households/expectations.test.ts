import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { doesWholeJob } from '../../src/advice/whole-job';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import type { Plan } from '../../src/plan/plan';
import { english } from '../../src/words/en';
import { folder, planOf } from './read-household';

interface Expectation {
  home: string;
  about: string;
  kwhPerDay: [number, number];
  runningWatts: [number, number];
  startVa: [number, number];
  advised: string[];
  cannot: string[];
  works: string[];
  doesTheWholeJob: boolean;
  fuelPerDayGal?: [number, number];
  nameplateKwh?: [number, number];
  mustCaution: string[];
  mustNotCaution: string[];
  saysSomewhere: string[];
  saysNowhere: string[];
  carries: string[];
  leavesOff: string[];
}

const all: Expectation[] = parse(readFileSync(join(folder, 'expectations.yaml'), 'utf8'));

function within(value: number, [low, high]: [number, number]) {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
}

describe.each(all)('$home', (wish) => {
  const plan: Plan = planOf(wish.home);
  const text = planMarkdown(plan, english);
  const season = plan.home.goalSeasons[0]!;
  const advised = plan.advice.route;

  test('its energy, running power and starting demand are what a practitioner would expect', () => {
    within(plan.home.demand.must.kwhPerDay[season].value, wish.kwhPerDay);
    within(plan.home.demand.must.runningWatts.value, wish.runningWatts);
    within(plan.home.demand.must.startVa.value, wish.startVa);
  });

  test('the route advised is one a practitioner would advise', () => {
    expect(wish.advised).toContain(advised.kind);
    expect(doesWholeJob(plan.home, advised)).toBe(wish.doesTheWholeJob);
    if (wish.fuelPerDayGal !== undefined) within(advised.fuel!.perDay.value, wish.fuelPerDayGal);
    if (wish.nameplateKwh !== undefined) within(advised.nameplateKwh!, wish.nameplateKwh);
    for (const name of wish.carries) expect(advised.carries).toContain(name);
  });

  test('routes that cannot work say why, and those that can are offered', () => {
    const kinds = (cannot: boolean) =>
      plan.routes.filter((r) => (r.verdict === 'cannot') === cannot).map((r) => r.kind);
    expect(kinds(true)).toEqual(expect.arrayContaining(wish.cannot));
    expect(kinds(false)).toEqual(expect.arrayContaining(wish.works));
    for (const route of plan.routes) {
      if (route.verdict === 'cannot') expect(route.stops.length).toBeGreaterThan(0);
    }
  });

  test('every caution that must show does, and none that does not belong', () => {
    const shown = plan.cautions.map((c) => c.id);
    expect(shown).toEqual(expect.arrayContaining(wish.mustCaution));
    expect(shown.filter((id) => wish.mustNotCaution.includes(id))).toEqual([]);
  });

  test('it says what must be said, and never what must not', () => {
    const flat = text.replace(/\s+/g, ' ');
    for (const words of wish.saysSomewhere) expect(flat).toContain(words);
    for (const words of wish.saysNowhere) expect(flat.toLowerCase()).not.toContain(words);
  });

  test('what stays off is off from the start', () => {
    expect(plan.ladder[0]!.switchOff).toEqual(expect.arrayContaining(wish.leavesOff));
  });

  test('no number in the summary is broken', () => {
    expect(text).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  });
});
