import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { english } from '../../src/words/en';
import { sayDecides } from '../../src/words/en/sureness/say-decides';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';
import { says } from '../says';

const empty = frozenPlan({}, '2026-11-25', 3);
const text = planMarkdown(empty, english);

describe('a home that told nothing', () => {
  test('gets one short page that names nothing to buy', () => {
    expect(text.split(/\s+/).length).toBeLessThan(1500);
    expect(text).not.toMatch(/What to buy|Worth having beside|Freezer|\$/);
    expect(empty.addOns).toEqual([]);
    expect(empty.advice.beside).toEqual([]);
  });

  test('is told which questions decide, and what each of them decides', () => {
    expect(empty.undecided.map((one) => one.question)).toEqual([
      'home-zip',
      'home-kind',
      'heat-main',
      'must-run',
      'engine-place',
      'battery-place',
    ]);
    for (const one of empty.undecided)
      expect(text).toContain(`${one.says}. ${sayDecides[one.question]}.`);
  });

  test('reads at most 15 cautions, what kills any home among them', () => {
    const section = text.split('## Cautions any home needs\n\n')[1]!.split('\n\n## ')[0]!;
    expect(section.split('\n- ').length).toBeLessThanOrEqual(15);
    for (const id of ['gas-smell', 'co-distance', 'no-backfeed', 'oven-heat'])
      expect(section).toContain(says(empty.cautions.find((one) => one.id === id)!));
  });

  test('never meets what it did not tell', () => {
    expect(text).not.toMatch(/you said|You said|sump|furnace|air conditioner|water heater/i);
    expect(text).not.toMatch(/not possible here|there is no\b/i);
    const off = empty.ladder.flatMap((step) => step.switchOff);
    expect(
      off.filter((id) => ['central-ac', 'room-ac', 'water-heater', 'sump'].includes(id)),
    ).toEqual([]);
    expect(JSON.stringify(empty.ladder.at(-1)!.why)).not.toMatch(/sump/);
  });

  test('what it told that harms as it is still comes first', () => {
    const cord = planMarkdown(
      frozenPlan({ 'own-sources': ['backfeed-cord'] }, '2026-11-25', 3),
      english,
    );
    const section = cord.split('## Cautions any home needs\n\n')[1]!;
    expect(section).toMatch(/^- Stop using the cord with a plug on both ends/);
  });
});

describe('a short talk', () => {
  const full = answersOf('tower-six');
  const short = Object.fromEntries(
    Object.entries(full).filter(([id]) => !['battery-place', 'heat-cold', 'cords'].includes(id)),
  );
  test('ends with a draft mark, for safety questions were never asked', () => {
    const plan = frozenPlan(short, '2026-11-25', 3);
    expect(plan.state).toBe('draft');
    expect(plan.draftBecause).toContainEqual(
      expect.objectContaining({
        id: 'never-asked',
        questions: expect.arrayContaining([expect.objectContaining({ question: 'battery-place' })]),
      }),
    );
    expect(frozenPlan(full, '2026-11-25', 3).state).toBe('complete');
  });
});

describe('a thin file that told what kills', () => {
  const some = {
    'must-run': ['fridge'],
    'medical-devices': ['ventilator'],
    'now-danger': ['none'],
  };
  const page = planMarkdown(frozenPlan(some, '2026-11-25', 3), english);

  test('says whom to call before anything, and keeps the cautions every home needs', () => {
    expect(page).toMatch(/## Before anything is bought\n\n- Call today/);
    for (const words of [
      'Never feed the house',
      'Never heat with an oven',
      'makes carbon monoxide',
    ])
      expect(page).toContain(words);
  });

  test('takes no wish for told: the hours are ours until they are given', () => {
    expect(page).toContain('How long was not told');
    expect(text).not.toMatch(/- Life support:|For a person at risk/);
  });
});

test('a home that was sure of nothing that decides buys nothing either, and a place not sure of decides by its careful branch', () => {
  const told = answersOf('tower-six');
  const unsure = { 'must-run': 'not sure', 'heat-main': 'not sure', 'home-zip': 'not sure' };
  const plan = frozenPlan({ ...told, ...unsure }, '2026-11-25', 3);
  expect(plan.undecided.map((one) => one.question)).toEqual(['home-zip', 'heat-main', 'must-run']);
  expect(planMarkdown(plan, english)).not.toContain('What to buy');
  const place = frozenPlan({ ...told, 'battery-place': 'not sure' }, '2026-11-25', 3);
  expect(place.undecided).toEqual([]);
});
