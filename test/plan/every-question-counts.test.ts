import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import type { Interview, Question } from '../../src/interview/questions/question';
import { answersOf } from '../households/read-household';
import { randomHome } from '../random-home';
import { filled, homeAsked, waysToAnswer } from './asked-home';
import { type Look, shownFirstBy } from './shown-first-by';
import { askedOf, billOf, homeSays, moneySays, plainlyOf, planOf, routesOf } from './what-it-says';

/** Questions that need change nothing, and why. */
const exempt: Readonly<Record<string, string>> = {
  'home-name': 'it names the file',
  'now-danger': 'it is answered on the spot, before there is a plan; its own tests hold it',
};

/** 300 random homes take minutes: `RANDOM_HOMES=300 npx vitest run test/plan/every-question-counts.test.ts`. */
const RANDOM_HOMES = Number(process.env.RANDOM_HOMES ?? 0);

/**
 * A vehicle that has something to give, where one is asked about: by the assumed figures it has nothing to spare. And
 * a battery that can be planned on: none is that gives rough power.
 */
const owned: Answers = { 'vehicle-kwh': 100, 'vehicle-miles': 20, 'pack-wave': 'pure' };

const homes: readonly Answers[] =
  RANDOM_HOMES > 0
    ? Array.from({ length: RANDOM_HOMES }, (_, n) => randomHome(n + 1))
    : ['ridge-road', 'tower-six', 'birch-street', 'mill-lane'].map((name) => ({
        ...answersOf(name),
        ...owned,
      }));

/** Each costs more than the one before; a question that a cheap one shows to count goes no further. */
const looks: Readonly<Record<Look, (answers: Answers, id: string) => string>> = {
  asked: askedOf,
  home: homeSays,
  bill: billOf,
  routes: routesOf,
  plainly: plainlyOf,
  money: moneySays,
  plan: planOf,
};

/** How many answers to a question are tried in one home: ends and middle of a number, every choice. */
const WAYS = 12;

/** A home is built in which it is asked; two of its answers give a plan that says something else. What is cheap is looked at in all homes first. */
function counts(question: Question, asker: Interview = interview, among = homes): boolean {
  const kept = new Map<Answers, readonly Answers[]>();
  const waysIn = (home: Answers): readonly Answers[] => {
    const known = kept.get(home);
    if (known !== undefined) return known;
    const bare = homeAsked(asker, home, question);
    const ways = bare === null ? [] : waysOf(question, only(filled(asker, bare)));
    kept.set(home, ways);
    return ways;
  };
  const shownBy = (look: Look): boolean =>
    among.some((home) => {
      const [first, ...others] = waysIn(home);
      if (first === undefined) return false;
      const said = looks[look](first, question.id);
      return others.some((answers) => looks[look](answers, question.id) !== said);
    });
  const hint = shownFirstBy.get(question.id);
  return (hint !== undefined && shownBy(hint)) || (Object.keys(looks) as Look[]).some(shownBy);
}

/** The home as it is, which many questions share, and with other answers to this one. */
function waysOf(question: Question, asked: Answers): Answers[] {
  const others = waysToAnswer(question)
    .slice(0, WAYS)
    .map((answer): Answers => ({ ...asked, [question.id]: answer }));
  return [asked, ...others];
}

const filledHomes = new Map<string, Answers>();

/** One object for the same answers, so that what is made of them is made once. */
function only(answers: Answers): Answers {
  const key = JSON.stringify(answers);
  const known = filledHomes.get(key) ?? answers;
  filledHomes.set(key, known);
  return known;
}

test('every question changes something besides being said back', () => {
  const dead = interview.questions.filter((q) => !(q.id in exempt) && !counts(q)).map((q) => q.id);
  expect(
    dead,
    'No answer to these moves a load, a route, a price, a caution, a step or what is asked: read them through `facts` in home, routes or a rule, or take them away',
  ).toEqual([]);
}, 900_000);

test('an answer that nothing reads is found dead', () => {
  const tenure = interview.questions.find((q) => q.id === 'home-tenure')!;
  const idle: Question = {
    ...tenure,
    id: 'favorite-color' as Question['id'],
    choices: tenure.choices!.slice(0, 2),
  };
  const withIdle = { ...interview, questions: [...interview.questions, idle] };
  const birch = homes.slice(2, 3);
  expect(homeAsked(withIdle, birch[0]!, idle)).not.toBeNull();
  expect(counts(idle, withIdle, birch)).toBe(false);
}, 60_000);
