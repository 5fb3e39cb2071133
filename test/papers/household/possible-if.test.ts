import { expect, test } from 'vitest';
import type { PossibleIf } from '../../../src/advice/possible-if';
import { sharingCautions } from '../../../src/papers/household/details/possible-if-groups';
import { frontPage } from '../../../src/papers/household/front/front-page';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { planData } from '../../../src/papers/plan-file/plan-data';
import { english } from '../../../src/words/en';
import { sayRule } from '../../../src/words/rule-sentences';
import { frozenPlan } from '../../frozen-plans';
import { answersOf, planOf } from '../../households/read-household';

const plan = frozenPlan(
  { ...answersOf('mill-lane'), 'engine-place': 'open-closer', 'battery-place': 'not sure' },
  '2026-11-25',
  3,
);
const text = planMarkdown(plan, english);
const part = (title: string) => text.split(`## ${title}`)[1]?.split('\n## ')[0] ?? '';
const said = part('What would be possible, if');

test('every line of what is possible if begins with if', () => {
  const lines = said.split('\n').filter((line) => line.startsWith('- '));
  expect(lines.length).toBeGreaterThan(6);
  for (const line of lines) expect(line).toMatch(/^- If /);
});

test('what can kill stands whole in the paragraph of its routes, and in that once', () => {
  const blocks = said.split('\n\n').filter((block) => block.startsWith('- If'));
  for (const { cautions, routes } of plan.possibleIf) {
    expect(cautions.length).toBeGreaterThan(0);
    for (const route of routes) {
      const own = blocks.filter((block) =>
        block.toLowerCase().includes(`if so: ${english.routeTitle(route.called).toLowerCase()},`),
      );
      expect(own).toHaveLength(1);
      for (const one of cautions)
        expect(own[0]!.split(sayRule(english.rules, one))).toHaveLength(2);
    }
  }
  const lines = said.split('\n').filter((line) => line.includes('this can kill'));
  expect(new Set(lines).size).toBe(lines.length);
  const told = plan.possibleIf.flatMap(({ cautions }) => cautions);
  expect(lines.length).toBeLessThan(told.length);
});

test('routes that share nothing deadly keep paragraphs of their own, in the order of the plan', () => {
  const [one] = plan.possibleIf;
  const at = (...ids: string[]) => ({
    ...one!,
    cautions: ids.map((id) => ({ ...one!.cautions[0]!, id })) as PossibleIf['cautions'],
  });
  const [a, b, c, d] = [
    at('co-distance'),
    at('battery-smoke'),
    at('solar-live'),
    at('co-distance', 'battery-smoke'),
  ];
  expect(sharingCautions([a, c])).toEqual([[a], [c]]);
  expect(sharingCautions([a, b, c, d])).toEqual([[a, b, d], [c]]);
});

test('none of it is bought, stepped to, advised or laid beside, and none called impossible', () => {
  const kinds = plan.possibleIf.flatMap(({ routes }) => routes.map(({ kind }) => kind));
  expect(kinds.length).toBeGreaterThan(2);
  const { advice } = plan;
  for (const route of [advice.route, ...advice.beside]) expect(kinds).not.toContain(route.kind);
  const titles = plan.possibleIf.flatMap(({ routes }) =>
    routes.map(({ called }) => english.routeTitle(called)),
  );
  const front = frontPage(plan, english).join('\n');
  for (const title of titles) {
    expect(front).not.toContain(title);
    expect(part('Next steps')).not.toContain(title);
    expect(part('The routes side by side')).not.toContain(title);
  }
});

test('the plan file holds the condition, who settles it, and the route as it would be', () => {
  const [first] = planData(plan, english).possibleIf;
  expect(first!.conditions[0]).toMatchObject({ code: expect.any(String), settles: 'household' });
  expect(first!.routes[0]!.cost.value).toBeGreaterThan(0);
});

test('an apartment is told once why no generator is possible', () => {
  const flat = planMarkdown(planOf('tower-six'), english);
  expect(flat.split('a generator cannot run at an apartment').length - 1).toBe(1);
  expect(flat).not.toContain('## What would be possible, if');
});
