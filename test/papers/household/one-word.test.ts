import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { equipmentCosts } from '../../../src/tables/prices/equipment-costs';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

/** What makes power from fuel is a generator. A generator is the part of a vehicle that burns fuel, and nothing else. */
const mayStand = [
  /\b(hybrid|vehicle|car|truck)\b[^.]*\bengine\b/i,
  /\bengine\b[^.]*\b(hybrid|vehicle|car|truck)\b/i,
  // The choices of the question what the vehicle runs on.
  /^(Hybrid or plug-in hybrid, battery and engine|Engine only, with outlets|If it ever takes fuel, it has an engine)$/,
];

/** Sentences of a text that say "generator" where nothing allows it. */
function saidOtherwise(text: string): string[] {
  return text
    .split(/(?<=[.!?])\s+|\n/)
    .filter((line) => /\bengines?\b/i.test(line) && !mayStand.some((one) => one.test(line)));
}

/** Every sentence in a value, however deep; keys and ids hold no spaces. */
function sentencesIn(value: unknown): string[] {
  if (typeof value === 'string') return value.includes(' ') || /^[A-Z]/.test(value) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(sentencesIn);
}

describe('one word for the machine', () => {
  test('catches the other word, and lets a vehicle have its engine', () => {
    expect(saidOtherwise('Start the engine outdoors.')).toHaveLength(1);
    expect(saidOtherwise("A hybrid's engine can start by itself.")).toEqual([]);
  });

  test('in every question, hint and choice', () => {
    expect(sentencesIn(interview).flatMap(saidOtherwise)).toEqual([]);
  });

  test('in the words of every rule and the names of what is bought', () => {
    const words = sentencesIn(english.rules);
    const names = equipmentCosts.rows.map((row) => english.part({ code: row.class }));
    expect([...words, ...names].flatMap(saidOtherwise)).toEqual([]);
  });

  test.each(['birch-street', 'tower-six', 'ridge-road', 'mill-lane'])(
    'in the plan of %s',
    (name) => {
      expect(saidOtherwise(planMarkdown(planOf(name), english))).toEqual([]);
    },
  );
});

/** Words with two meanings, read backwards, or a trade name; each has a plain one of our own. */
const givenUp =
  /\bWi-?Fi\b|in a bad case|is left out; and|nothing that must keep running is left out;/i;

test.each(['birch-street', 'tower-six', 'ridge-road', 'mill-lane'])(
  'words that were given up stay away from the plan of %s and from the questions',
  (name) => {
    expect(planMarkdown(planOf(name), english)).not.toMatch(givenUp);
    expect(sentencesIn(interview).filter((said) => givenUp.test(said))).toEqual([]);
  },
);
