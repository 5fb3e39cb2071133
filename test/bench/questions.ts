import interview from '#compiled/questions.js';
import type { Bank } from '../../src/advice/effect-of-answers';
import { liveAdvice } from '../../src/advice/live-advice';
import { type Trial, trials } from '../../src/advice/trial';
import { type Answers, NOT_SURE } from '../../src/interview/answers';
import { sayWhyNow } from '../../src/words/en/say-why-now';
import { completeHome } from '../complete-home';
import { keyPresses } from './key-presses';
import { AS_OF, bankForTalks, filled, readingMs, type Turn, talk, talkHomes } from './talk';

/** Price within this share is the same advice. */
const SAME_PRICE = 0.1;

/**
 * How many questions a talk takes: until the first plan, until its advice is that of the whole file and stays so, until
 * nothing more would change what to buy; the keys that answer them, how many are "not sure", how long they are read; and how long
 * the next question takes to find where nothing is worked out ahead.
 */
export function benchQuestions(): string[] {
  const lines = [
    'home           file  first  right  right+price  enough  keys  unsure  read s  safety  jumps   ms50   ms95',
  ];
  const all: number[] = [];
  const hundred = trials(interview, AS_OF, 100);
  let alike = 0;
  for (const [name, home] of talkHomes('test')) {
    const bank = bankForTalks();
    const turns = talk(bank, home);
    const whole = bank.trialOf(home);
    const kindAt = settledAt(turns, (answers) => sameKind(bank.trialOf(answers), whole));
    const priceAt = settledAt(turns, (answers) => samePrice(bank.trialOf(answers), whole));
    if (hundred(home).advice.route.kind === whole.advice.route.kind) alike += 1;
    const ms = turns.map((turn) => turn.ms).sort((a, b) => a - b);
    all.push(...ms);
    const work = workOf(bank, home, turns);
    lines.push(
      [
        name.padEnd(13),
        String(Object.keys(home).length).padStart(5),
        String(openingCount(turns)).padStart(6),
        said(kindAt).padStart(6),
        said(priceAt).padStart(12),
        String(turns.length - 1).padStart(7),
        String(work.keys).padStart(5),
        String(work.unsure).padStart(7),
        work.readSeconds.toFixed(0).padStart(7),
        String(
          turns.filter(({ next }) => next.code === 'ask' && next.whyNow.code === 'could-forbid')
            .length,
        ).padStart(7),
        String(jumps(turns)).padStart(6),
        ...[0.5, 0.95].map((at) => shareAt(ms, at).toFixed(0).padStart(6)),
      ].join(' '),
    );
  }
  all.sort((a, b) => a - b);
  lines.push(
    `next question, processor time: 95 of 100 within ${shareAt(all, 0.95).toFixed(0)} ms where nothing was read ahead`,
    `five drawn years advise the kind of route that a hundred do: ${alike} of ${talkHomes('test').size} homes`,
    randomHomes(),
  );
  return lines;
}

const shareAt = (sorted: readonly number[], at: number): number =>
  sorted[Math.floor(at * (sorted.length - 1))]!;

/** What a household does until enough is known. */
function workOf({ knownOf }: Bank, home: Answers, turns: readonly Turn[]) {
  const work = { keys: 0, unsure: 0, readSeconds: 0 };
  for (const { before, next } of turns) {
    if (next.code !== 'ask') continue;
    const question = interview.questions.find(({ id }) => id === next.questionId)!;
    const answer = home[question.id] ?? NOT_SURE;
    work.keys += keyPresses(question, answer, knownOf(before));
    work.unsure += Number(answer === NOT_SURE);
    work.readSeconds += readingMs(question, sayWhyNow(next.whyNow)) / 1000;
  }
  return work;
}

const RANDOM_HOMES = 10;

/** Homes made up by chance that know everything: the advice once enough is told, against that of the whole file. */
function randomHomes(): string {
  let [kinds, prices] = [0, 0];
  for (let seed = 1; seed <= RANDOM_HOMES; seed++) {
    // A height drawn by chance fits no place, and the ZIP code tells how high a home lies.
    const home = filled({ ...completeHome(seed), 'home-elevation': NOT_SURE });
    const bank = bankForTalks();
    const [told, whole] = [talk(bank, home).at(-1)!.before, home].map(bank.trialOf) as [
      Trial,
      Trial,
    ];
    if (sameKind(told, whole)) kinds += 1;
    if (samePrice(told, whole)) prices += 1;
  }
  return `after "enough", as with the whole file: route ${kinds}, route and price ${prices} of ${RANDOM_HOMES} random homes`;
}

/** By the list, as the plan advises. */
function sameKind(a: Trial, b: Trial): boolean {
  return liveAdvice(a).route.kind === liveAdvice(b).route.kind;
}

function samePrice(a: Trial, b: Trial): boolean {
  const [one, other] = [a, b].map((trial) => liveAdvice(trial).route.costUsd.value) as [
    number,
    number,
  ];
  return sameKind(a, b) && Math.abs(one - other) <= SAME_PRICE * Math.max(one, other);
}

const said = (at: number | null) => (at === null ? 'never' : String(at));

/** Asked before the first plan stands. */
function openingCount(turns: readonly Turn[]): number {
  return turns.filter(({ next }) => next.code === 'ask' && next.whyNow.code === 'opening').length;
}

/** From how many answers on it holds to the end; null when not even there. */
function settledAt(turns: readonly Turn[], holds: (answers: Answers) => boolean): number | null {
  let at: number | null = null;
  for (let i = turns.length - 1; i >= 0 && holds(turns[i]!.before); i--) at = i;
  return at;
}

/** How often one question is of another topic than the one before it, after the opening. */
function jumps(turns: readonly Turn[]): number {
  const topics = turns
    .flatMap(({ next }) =>
      next.code === 'ask' && next.whyNow.code !== 'opening' ? [next.questionId] : [],
    )
    .map((id) => interview.questions.find((one) => one.id === id)!.topic);
  return topics.filter((topic, i) => i > 0 && topic !== topics[i - 1]).length;
}
