import { describe, expect, it } from 'vitest';
import interview from '#compiled/questions.js';
import { type Answer, type Answers, NOT_SURE } from '../../src/interview/answers';
import { holds } from '../../src/interview/questions/holds';
import type { Choice, Condition, Question } from '../../src/interview/questions/question';
import { resolve } from '../../src/interview/questions/resolve';

const { questions } = interview;
const byId = new Map(questions.map((q) => [q.id, q]));
const get = (id: string): Question => byId.get(id)!;

/** Conditions without `all` and `any`: each names one question and what it is compared with. */
type Leaf = Exclude<Condition, { all: unknown } | { any: unknown }>;

function leaves(condition: Condition | undefined): Leaf[] {
  if (condition === undefined) return [];
  if ('all' in condition) return condition.all.flatMap(leaves);
  if ('any' in condition) return condition.any.flatMap(leaves);
  return [condition];
}

const everyCondition = questions.flatMap((q) => [
  ...leaves(q.when).map((leaf) => ({ at: q.id, leaf })),
  ...(q.choices ?? []).flatMap((c) =>
    leaves(c.when).map((leaf) => ({ at: `${q.id}/${c.id}`, leaf })),
  ),
]);

function idsOf(leaf: Leaf): readonly string[] {
  for (const key of ['is', 'isNot', 'has', 'hasNot'] as const) {
    const ids = (leaf as Record<string, unknown>)[key];
    if (ids !== undefined) return [ids as string | string[]].flat();
  }
  return [];
}

/** The questions a condition rests on, and those that they rest on, in asking order. */
function restsOn(condition: Condition | undefined): Question[] {
  const found = new Set<string>();
  const add = (c: Condition | undefined) => {
    for (const { q } of leaves(c)) {
      if (found.has(q)) continue;
      found.add(q);
      add(get(q).when);
    }
  };
  add(condition);
  return questions.filter((q) => found.has(q.id));
}

/** Answers worth trying: every choice alone and all of them, both sides of each number compared with, and not sure. */
function candidates(question: Question): Answer[] {
  const { kind, choices = [], possible } = question;
  if (kind === 'choice') return [...choices.map((c) => c.id), NOT_SURE];
  if (kind === 'choices') {
    const together = choices.filter((c) => !c.alone).map((c) => c.id);
    return [...choices.map((c) => [c.id]), together, NOT_SURE];
  }
  if (kind === 'zip') return ['04401', NOT_SURE];
  if (kind !== 'number') return [NOT_SURE];
  const compared = everyCondition.flatMap(({ leaf }) => {
    if (leaf.q !== question.id) return [];
    if ('atLeast' in leaf) return [leaf.atLeast];
    return 'below' in leaf ? [leaf.below] : [];
  });
  const [low, high] = possible!;
  const tried = compared.flatMap((n) => [n - 1, n]).filter((n) => n >= low && n <= high);
  return [...new Set([low, high, ...tried]), NOT_SURE];
}

const under = new Map<Condition, readonly Question[]>();

/** All that a condition rests on: no other question can move it, and resolving all of them each time takes seconds. */
function questionsUnder(condition: Condition): readonly Question[] {
  const known = under.get(condition) ?? restsOn(condition);
  under.set(condition, known);
  return known;
}

const applies = ({ when }: Question, answers: Answers) =>
  when === undefined || holds(when, resolve(questionsUnder(when), answers, 'leave'));

/** As the program judges it: what is asked later counts as "not sure" until it is asked. */
const isOffered = ({ when }: Choice, answers: Answers) =>
  when === undefined || holds(when, resolve(questionsUnder(when), answers, 'assume'));

/** A choice may be chosen only where it is offered. */
function mayAnswer(question: Question, answer: Answer, answers: Answers): boolean {
  const chosen = [answer].flat();
  const picked = (question.choices ?? []).filter((c) => chosen.includes(c.id));
  return picked.every((c) => isOffered(c, answers));
}

/** Answers, given in asking order, after which `wanted` holds; null when there are none. */
function search(
  rest: readonly Question[],
  wanted: (answers: Answers) => boolean,
  answers: Answers = {},
): Answers | null {
  const [next, ...later] = rest;
  if (next === undefined) return wanted(answers) ? answers : null;
  if (!applies(next, answers)) return search(later, wanted, answers);
  for (const answer of candidates(next)) {
    if (!mayAnswer(next, answer, answers)) continue;
    const found = search(later, wanted, { ...answers, [next.id]: answer });
    if (found !== null) return found;
  }
  return null;
}

const askedWith = (answers: Answers) =>
  questions.filter((q) => applies(q, answers)).map((q) => q.id);

describe('every condition', () => {
  it('names choices that its question has, and compares like with like', () => {
    expect(everyCondition.length).toBeGreaterThan(50);
    for (const { at, leaf } of everyCondition) {
      const { kind, choices = [] } = get(leaf.q);
      for (const id of idsOf(leaf))
        expect(
          choices.map((c) => c.id),
          `${at}: ${leaf.q}`,
        ).toContain(id);
      if ('is' in leaf || 'isNot' in leaf) expect(kind, `${at}: ${leaf.q}`).toBe('choice');
      if ('has' in leaf || 'hasNot' in leaf) expect(kind, `${at}: ${leaf.q}`).toBe('choices');
      if ('atLeast' in leaf || 'below' in leaf) expect(kind, `${at}: ${leaf.q}`).toBe('number');
    }
  });

  it('compares a number with one that can be answered on both sides', () => {
    for (const { at, leaf } of everyCondition) {
      const limit = 'atLeast' in leaf ? leaf.atLeast : 'below' in leaf ? leaf.below : null;
      if (limit === null) continue;
      const [low, high] = get(leaf.q).possible!;
      expect(limit, at).toBeGreaterThan(low);
      expect(limit, at).toBeLessThanOrEqual(high);
    }
  });
});

describe('every question', () => {
  it.each(questions.map((q) => [q.id, q] as const))('%s is asked of some home', (_, question) => {
    expect(search(restsOn(question.when), (a) => applies(question, a))).not.toBeNull();
  });

  const conditional = questions.filter((q) => q.when !== undefined);
  it.each(conditional.map((q) => [q.id, q] as const))('%s is spared some home', (_, question) => {
    expect(search(restsOn(question.when), (a) => !applies(question, a))).not.toBeNull();
  });
});

describe('every choice', () => {
  const all = questions.flatMap((q) =>
    (q.choices ?? []).map((c) => [`${q.id}/${c.id}`, q, c] as const),
  );

  it.each(all)('%s is offered to some home that is asked', (_, question, choice) => {
    const both = [question.when, choice.when].filter((c) => c !== undefined);
    const ancestors = restsOn({ all: both });
    const found = search(ancestors, (a) => applies(question, a) && isOffered(choice, a));
    expect(found).not.toBeNull();
  });

  const conditional = all.filter(([, , c]) => c.when !== undefined);
  it.each(conditional)('%s is not offered to every home', (_, question, choice) => {
    const ancestors = restsOn({ all: [question.when, choice.when].filter((c) => c !== undefined) });
    expect(search(ancestors, (a) => applies(question, a) && !isOffered(choice, a))).not.toBeNull();
  });

  it('leaves a way out of every list of ticks: none of these', () => {
    for (const q of questions.filter((one) => one.kind === 'choices')) {
      const alone = q.choices!.filter((c) => c.alone && c.when === undefined);
      expect(alone.length, q.id).toBeGreaterThanOrEqual(1);
    }
  });
});

describe('whole homes', () => {
  it('asks an apartment nothing about wells, its own panel, engine places or tanks', () => {
    const asked = askedWith({ 'home-kind': 'apartment', 'home-tenure': 'rent' });
    for (const id of ['water-source', 'waste', 'sump', 'main-amps', 'panel-kind', 'panel-bus']) {
      expect(asked).not.toContain(id);
    }
    for (const id of ['transfer-existing', 'engine-place', 'roof-face', 'gas-supply']) {
      expect(asked).not.toContain(id);
    }
    for (const id of ['panel-signs', 'supply-volts', 'co-alarm', 'own-sources']) {
      expect(asked).toContain(id);
    }
  });

  it('asks a home off the grid for no bill', () => {
    const asked = askedWith({ 'home-kind': 'off-grid' });
    expect(asked.filter((id) => id.startsWith('bill-'))).toEqual([]);
    expect(asked).toContain('supply-volts');
  });

  it('asks who owns an engine how it is connected, who is not sure of the year about old wiring', () => {
    expect(askedWith({ 'own-sources': ['engine-portable'] })).toContain('engine-connect');
    expect(askedWith({ 'own-sources': ['solar'] })).not.toContain('engine-connect');
    expect(askedWith({ 'home-year': NOT_SURE })).toContain('wiring-signs');
    expect(askedWith({ 'home-year': 1970 })).toContain('wiring-signs');
    expect(askedWith({ 'home-year': 2005 })).not.toContain('wiring-signs');
  });

  it('asks for device details after a device is named, and after nothing else', () => {
    const named = askedWith({ 'medical-devices': ['oxygen-concentrator'] });
    for (const id of ['oxygen-watts', 'device-safe-hours', 'second-source']) {
      expect(named).toContain(id);
    }
    const cold = askedWith({ 'medical-devices': ['fridge-medicine'] });
    expect(cold).not.toContain('device-safe-hours');
  });
});
